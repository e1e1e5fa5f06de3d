// SPDX-License-Identifier: MIT
#include <QTest>

#include <set>

#include "domain/log/edit.h"
#include "domain/log/fold.h"
#include "domain/records/bulletin.h"
#include "domain/records/programme.h"
#include "domain/records/question.h"
#include "domain/records/roster.h"
#include "domain/records/trap.h"
#include "domain/records/visit.h"
#include "domain/records/walk.h"
#include "domain/records/weather.h"

using namespace duskrow::domain;
using namespace std::string_literals;

namespace {

// Names that once meant something and must not come back with another meaning: "kind.field".
const std::set<std::string> retired{};

std::shared_ptr<Record> emptyRecord(const RecordKind& kind)
{
    const auto make = [&]<typename R>(std::type_identity<R>) -> std::shared_ptr<Record> {
        return &kind == &kindOf<R>() ? std::make_shared<R>() : nullptr;
    };
    const auto first = [&]<typename... R>(std::type_identity<R>... types) {
        std::shared_ptr<Record> made;
        ((made = made ? std::move(made) : make(types)), ...);
        return made;
    };
    return first(std::type_identity<Programme>{}, std::type_identity<Season>{},
        std::type_identity<District>{}, std::type_identity<ProtocolUse>{}, std::type_identity<Member>{},
        std::type_identity<Site>{}, std::type_identity<Trap>{}, std::type_identity<Service>{},
        std::type_identity<Loan>{}, std::type_identity<Visit>{}, std::type_identity<Sample>{},
        std::type_identity<Walk>{}, std::type_identity<Frame>{}, std::type_identity<Decision>{},
        std::type_identity<Device>{}, std::type_identity<Invitation>{}, std::type_identity<Assignment>{},
        std::type_identity<Ruling>{}, std::type_identity<Admission>{}, std::type_identity<Station>{},
        std::type_identity<Temperature>{}, std::type_identity<Question>{}, std::type_identity<Answer>{},
        std::type_identity<PublishedBulletin>{});
}

// Values that a field must take and give back unchanged.
std::vector<Value> valuesFor(const Field& field)
{
    switch (field.type) {
    case FieldType::Flag:
        return {true, false};
    case FieldType::Integer:
        return {field.low, field.high, std::clamp<std::int64_t>(0, field.low, field.high)};
    case FieldType::Day:
        return {"2026-07-14"s, "2024-02-29"s, "0001-01-01"s};
    case FieldType::Id:
        return {"01980a5c-1000-7000-8000-000000000003"s};
    case FieldType::Code: {
        std::vector<Value> all;
        for (const std::string_view code : field.codes) all.emplace_back(std::string(code));
        return all;
    }
    case FieldType::Text:
    case FieldType::Decimal:
        break;
    }
    return {"moth \xF0\x9F\xA6\x8B \xD7\xA9"s, std::string(static_cast<std::size_t>(field.high), 'm')};
}

void eachField()
{
    QTest::addColumn<QByteArray>("kind");
    QTest::addColumn<QByteArray>("field");
    for (const RecordKind* kind : recordKinds())
        for (const Field& field : kind->fields) {
            const QByteArray kindName(kind->name.data(), static_cast<qsizetype>(kind->name.size()));
            const QByteArray fieldName(field.name.data(), static_cast<qsizetype>(field.name.size()));
            QTest::newRow((kindName + '.' + fieldName).constData()) << kindName << fieldName;
        }
}

} // namespace

class RecordsTest : public QObject {
    Q_OBJECT

    const RecordKind* m_kind = nullptr;
    const Field* m_field = nullptr;

private Q_SLOTS:
    void init()
    {
        m_kind = nullptr;
        m_field = nullptr;
    }

    void comesBackThroughTheRecordAndTheLog_data() { eachField(); }
    void comesBackThroughTheRecordAndTheLog()
    {
        fetchField();
        QVERIFY(isEmpty(m_field->get(*emptyRecord(*m_kind))));
        for (const Value& value : valuesFor(*m_field)) {
            QVERIFY(checkValue(*m_field, value).has_value());
            const auto record = emptyRecord(*m_kind);
            QVERIFY(m_field->set(*record, value));
            QVERIFY(m_field->get(*record) == value);

            Change change;
            change.kind = m_kind->name;
            change.record.bytes.back() = 1;
            change.ref.seq = 1;
            for (const auto& [name, set] : creation(*m_kind, *record, {}).fields)
                change.fields[name] = {set, {}};
            const auto read = readChange(canonicalJson(change));
            QVERIFY(read.has_value());
            const auto again = emptyRecord(*m_kind);
            for (const auto& [name, set] : read->fields) assign(*m_kind, *again, name, set.value);
            QVERIFY(m_field->get(*again) == value);
            QVERIFY(again->fromNewer.empty());

            QVERIFY(m_field->set(*record, Value{}));
            QVERIFY(isEmpty(m_field->get(*record)));
            QVERIFY(creation(*m_kind, *record, {}).fields.empty());
        }
    }

    void whatItCannotHoldStaysBeside_data() { eachField(); }
    void whatItCannotHoldStaysBeside()
    {
        fetchField();
        const auto record = emptyRecord(*m_kind);
        for (const Value& strange : {Value{RawJson{"[1]"}}, strangeFor(*m_field)}) {
            assign(*m_kind, *record, std::string(m_field->name), strange);
            QVERIFY(isEmpty(m_field->get(*record)));
            QVERIFY(record->fromNewer.at(std::string(m_field->name)) == strange);
        }
        const Value good = valuesFor(*m_field).front();
        assign(*m_kind, *record, std::string(m_field->name), good);
        QVERIFY(m_field->get(*record) == good);
        QVERIFY(record->fromNewer.empty());
    }

    void bounds_data() { eachField(); }
    void bounds()
    {
        fetchField();
        for (const auto& [value, code] : wrongFor(*m_field)) {
            const auto checked = checkValue(*m_field, value);
            QVERIFY(!checked.has_value());
            QCOMPARE(checked.error().code, code);
            const auto& args = checked.error().args;
            QVERIFY(std::count(args.begin(), args.end(), m_field->name) > 0);
        }
    }

    void namesAreWellFormedAndUnique()
    {
        std::set<std::string_view> kinds;
        for (const RecordKind* kind : recordKinds()) {
            QVERIFY(kinds.insert(kind->name).second);
            QCOMPARE(findKind(kind->name), kind);
            QVERIFY(emptyRecord(*kind) != nullptr);
            QCOMPARE(kind->fields.front().name, std::string_view("withdrawn"));
            std::set<std::string_view> names;
            for (const Field& field : kind->fields) {
                QVERIFY2(names.insert(field.name).second, field.name.data());
                QVERIFY2(!retired.contains(std::string(kind->name) + '.' + std::string(field.name)),
                    field.name.data());
                for (const char c : field.name)
                    QVERIFY2((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_', field.name.data());
                // Columns that every table has beside the fields.
                for (const char* taken : {"id", "newer", "brought_back"})
                    QVERIFY2(field.name != taken, field.name.data());
            }
        }
        QVERIFY(findKind("balloon") == nullptr);
    }

    void integersSayTheirUnitAndBounds()
    {
        for (const RecordKind* kind : recordKinds())
            for (const Field& field : kind->fields) {
                if (field.type != FieldType::Integer) continue;
                QVERIFY2(!field.unit.empty() || field.name == "year", field.name.data());
                QVERIFY2(field.low < field.high, field.name.data());
                QVERIFY2(field.low > std::numeric_limits<std::int64_t>::min(), field.name.data());
                for (const std::string_view unit : {"mm", "ms"}) {
                    const std::string end = '_' + std::string(unit);
                    QCOMPARE(field.name.ends_with(end), field.unit.starts_with(unit));
                }
            }
    }

    void codesAreUnique()
    {
        for (const RecordKind* kind : recordKinds())
            for (const Field& field : kind->fields) {
                QCOMPARE(field.codes.empty(), field.type != FieldType::Code);
                const std::set<std::string_view> codes(field.codes.begin(), field.codes.end());
                QCOMPARE(codes.size(), field.codes.size());
            }
    }

    void aCorrectionHoldsOnlyWhatDiffers()
    {
        Visit before;
        before.id.bytes.back() = 5;
        before.pest = Moths{37};
        before.remark = "hail";
        Visit after = before;
        QVERIFY(correction(before, after, {}).fields.empty());
        after.pest = Moths{73};
        after.remark.clear();
        const Edit edit = correction(before, after, {});
        QCOMPARE(edit.fields.size(), std::size_t{2});
        QVERIFY(edit.fields.at("pest") == Value{std::int64_t{73}});
        QVERIFY(isEmpty(edit.fields.at("remark")));
        QVERIFY(checkEdit(edit).has_value());
    }

    void editsOfNothingAreRefused()
    {
        Visit visit;
        visit.pest = Moths{1};
        QCOMPARE(checkEdit(creation(visit, {})).error().code, ErrorCode::RecordMissing);
        visit.id.bytes.back() = 1;
        Edit edit = creation(visit, {});
        QVERIFY(checkEdit(edit).has_value());
        edit.fields["zz"] = true;
        QCOMPARE(checkEdit(edit).error().code, ErrorCode::UnknownCode);
        edit.kind = "balloon";
        QCOMPARE(checkEdit(edit).error().code, ErrorCode::UnknownCode);
    }

    // Two remarks that came together may be longer than one person may type: they are held all the same.
    void aLongerTextThanMayBeTypedIsHeld()
    {
        const Field& remark = *kindOf<Visit>().find("remark");
        const Value both = std::string(70'000, 'm');
        QCOMPARE(checkValue(remark, both).error().code, ErrorCode::TooLong);
        Visit visit;
        assign(kindOf<Visit>(), visit, "remark", both);
        QCOMPARE(visit.remark.size(), std::size_t{70'000});
        QVERIFY(visit.fromNewer.empty());
    }

private:
    void fetchField()
    {
        QFETCH(QByteArray, kind);
        QFETCH(QByteArray, field);
        m_kind = findKind(kind.toStdString());
        QVERIFY(m_kind);
        m_field = m_kind->find(field.toStdString());
        QVERIFY(m_field);
    }

    static Value strangeFor(const Field& field)
    {
        switch (field.type) {
        case FieldType::Flag:
            return std::int64_t{1};
        case FieldType::Integer:
            return field.high + 1;
        case FieldType::Text:
        case FieldType::Decimal:
            return false;
        case FieldType::Code:
            return "from_a_newer_version"s;
        case FieldType::Day:
            return "2026-02-30"s;
        case FieldType::Id:
            return "01980A5C-1000-7000-8000-000000000003"s;
        }
        return {};
    }

    static std::vector<std::pair<Value, ErrorCode>> wrongFor(const Field& field)
    {
        std::vector<std::pair<Value, ErrorCode>> wrong{{RawJson{"{}"}, ErrorCode::NotANumber}};
        switch (field.type) {
        case FieldType::Flag:
            wrong.emplace_back("yes"s, ErrorCode::NotANumber);
            break;
        case FieldType::Integer:
            wrong.emplace_back(field.low - 1, ErrorCode::OutOfRange);
            wrong.emplace_back(field.high + 1, ErrorCode::OutOfRange);
            wrong.emplace_back("37"s, ErrorCode::NotANumber);
            break;
        case FieldType::Day:
            wrong.emplace_back("2026-02-30"s, ErrorCode::NotADay);
            break;
        case FieldType::Code:
        case FieldType::Id:
            wrong.emplace_back("balloon"s, ErrorCode::UnknownCode);
            break;
        case FieldType::Text:
        case FieldType::Decimal:
            wrong.emplace_back(
                std::string(static_cast<std::size_t>(field.high) + 1, 'm'), ErrorCode::TooLong);
            wrong.emplace_back("a\0b"s, ErrorCode::ChangeMalformed);
            wrong.emplace_back("caf\xE9"s, ErrorCode::ChangeMalformed);
            break;
        }
        return wrong;
    }
};

QTEST_APPLESS_MAIN(RecordsTest)
#include "records_test.moc"
