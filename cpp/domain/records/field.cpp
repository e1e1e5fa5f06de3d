// SPDX-License-Identifier: MIT
#include "domain/records/field.h"

#include <algorithm>

#include "domain/base/utf8.h"
#include "domain/records/bulletin.h"
#include "domain/records/programme.h"
#include "domain/records/question.h"
#include "domain/records/roster.h"
#include "domain/records/trap.h"
#include "domain/records/visit.h"
#include "domain/records/walk.h"
#include "domain/records/weather.h"

namespace duskrow::domain {

const Field* RecordKind::find(std::string_view field) const
{
    const auto found =
        std::find_if(fields.begin(), fields.end(), [&](const Field& f) { return f.name == field; });
    return found == fields.end() ? nullptr : &*found;
}

const std::vector<const RecordKind*>& recordKinds()
{
    static const std::vector<const RecordKind*> kinds{&kindOf<Programme>(), &kindOf<Season>(),
        &kindOf<District>(), &kindOf<ProtocolUse>(), &kindOf<Member>(), &kindOf<Site>(), &kindOf<Trap>(),
        &kindOf<Service>(), &kindOf<Loan>(), &kindOf<Visit>(), &kindOf<Sample>(), &kindOf<Walk>(),
        &kindOf<Frame>(), &kindOf<Decision>(), &kindOf<Station>(), &kindOf<Temperature>(), &kindOf<Device>(),
        &kindOf<Invitation>(), &kindOf<Assignment>(), &kindOf<Ruling>(), &kindOf<Admission>(),
        &kindOf<Question>(), &kindOf<Answer>(), &kindOf<PublishedBulletin>()};
    return kinds;
}

const RecordKind* findKind(std::string_view name)
{
    const auto& kinds = recordKinds();
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [&](const RecordKind* k) { return k->name == name; });
    return found == kinds.end() ? nullptr : *found;
}

namespace {

Result<Done> checkInteger(const Field& field, std::int64_t number)
{
    if (number >= field.low && number <= field.high) return Done{};
    return Error{ErrorCode::OutOfRange,
        {std::string(field.name), std::to_string(field.low), std::to_string(field.high)}};
}

// Whether a text has the form that its field asks for.
bool isOfForm(const Field& field, const std::string& text)
{
    if (field.type == FieldType::Id) return parseUuid(text).has_value();
    if (field.type == FieldType::Code)
        return std::find(field.codes.begin(), field.codes.end(), text) != field.codes.end();
    return true;
}

Result<Done> checkText(const Field& field, const std::string& text)
{
    if (!isReadableText(text)) return Error{ErrorCode::ChangeMalformed, {std::string(field.name)}};
    if (field.type == FieldType::Day && !parseDay(text))
        return Error{ErrorCode::NotADay, {text, std::string(field.name)}};
    if (!isOfForm(field, text)) return Error{ErrorCode::UnknownCode, {std::string(field.name), text}};
    if (static_cast<std::int64_t>(text.size()) > field.high)
        return Error{ErrorCode::TooLong, {std::string(field.name), std::to_string(field.high)}};
    return Done{};
}

} // namespace

Result<Done> checkValue(const Field& field, const Value& value)
{
    if (isEmpty(value))
        return field.required ? Result<Done>(Error{ErrorCode::Empty, {std::string(field.name)}}) : Done{};
    const auto wrongType = [&] { return Error{ErrorCode::NotANumber, {std::string(field.name)}}; };
    switch (field.type) {
    case FieldType::Flag:
        return std::holds_alternative<bool>(value) ? Result<Done>(Done{}) : wrongType();
    case FieldType::Integer:
        if (const auto* number = std::get_if<std::int64_t>(&value)) return checkInteger(field, *number);
        return wrongType();
    case FieldType::Text:
    case FieldType::Code:
    case FieldType::Day:
    case FieldType::Id:
    case FieldType::Decimal:
        if (const auto* text = std::get_if<std::string>(&value)) return checkText(field, *text);
        return wrongType();
    }
    return wrongType();
}

bool canHold(const Field& field, const Value& value)
{
    if (isEmpty(value)) return true;
    if (field.type == FieldType::Text) return std::holds_alternative<std::string>(value);
    return checkValue(field, value).has_value();
}

void assign(const RecordKind& kind, Record& record, const std::string& field, const Value& value)
{
    const Field* known = kind.find(field);
    const bool isHeld = known && canHold(*known, value) && known->set(record, value);
    if (isHeld || isEmpty(value))
        record.fromNewer.erase(field);
    else
        record.fromNewer[field] = value;
}

} // namespace duskrow::domain
