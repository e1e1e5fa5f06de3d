// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include <algorithm>

#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/difference_list.h"
#include "tool/holding.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

struct SettleLine {
    std::string store;
    std::string keys;
    std::string record;
    std::string field;
    std::string value;
    std::string take;
    bool asJson = false;
};

// What was typed, as the field holds it. Whether it may stand there is for the store to say.
Result<Value> valueFor(const std::string& kind, const std::string& name, const std::string& typed)
{
    const RecordKind* known = findKind(kind);
    const Field* field = known ? known->find(name) : nullptr;
    if (!field) return Error{ErrorCode::UnknownCode, {kind, name}};
    if (typed.empty()) return Value{};
    if (field->type == FieldType::Flag) {
        if (typed != "true" && typed != "false") return Error{ErrorCode::UnknownCode, {name, typed}};
        return Value{typed == "true"};
    }
    if (field->type != FieldType::Integer) return Value{typed};
    const auto number = wholeNumber(typed, field->name.data(), field->low, field->high);
    if (!number) return number.error();
    return Value{*number};
}

Result<Value> outcome(const SettleLine& line, const OpenField& open)
{
    if (line.take.empty()) return valueFor(open.kind, open.field, line.value);
    for (const OpenValue& value : open.values)
        if (formatRef(value.change) == line.take) return value.value;
    return Error{ErrorCode::NameMissing, {"change", line.take}};
}

Result<int> settle(const SettleLine& line)
{
    auto holding = openToWrite(line.store, line.keys);
    if (!holding) return holding.error();
    if (const auto allowed = asCoordinator(*holding); !allowed) return allowed.error();
    const auto all = openFields(*holding->reader, holding->store->programme(), holding->roster);
    if (!all) return all.error();
    const auto open = std::find_if(all->begin(), all->end(), [&](const OpenField& one) {
        return formatUuid(one.record) == line.record && one.field == line.field;
    });
    if (open == all->end())
        return Error{ErrorCode::NameMissing, {"difference", line.record + ' ' + line.field}};
    const auto value = outcome(line, *open);
    if (!value) return value.error();
    const auto kept = keep(*holding, {Edit{open->kind, open->record, open->site, {{line.field, *value}}}});
    if (!kept) return kept.error();
    const auto left = openFields(*holding->reader, holding->store->programme(), holding->roster);
    if (!left) return left.error();
    if (line.asJson)
        print(QString::fromStdString(differencesJson(*left, {}, {}).dump(2)));
    else
        print(QCoreApplication::translate("Tool", "It is settled. The others see it after an exchange."));
    return 0;
}

} // namespace

Work declareSettle(CLI::App& line)
{
    const auto typed = std::make_shared<SettleLine>();
    addStore(line, typed->store);
    line.add_option("--record", typed->record, "The record, as differences shows it")
        ->required()
        ->type_name("ID");
    line.add_option("--field", typed->field, "The field on which people differ")
        ->required()
        ->type_name("FIELD");
    CLI::Option_group* how = line.add_option_group("outcome", "What it comes to");
    how->add_option("--value", typed->value, "In the unit of the field")->type_name("VALUE");
    how->add_option("--take", typed->take, "One of the values, by its change")->type_name("CHANGE");
    how->require_option(1);
    line.add_flag("--json", typed->asJson, "The differences that are left, for other programs");
    addKeys(line, typed->keys);
    return [typed] { return settle(*typed); };
}

} // namespace duskrow::tool
