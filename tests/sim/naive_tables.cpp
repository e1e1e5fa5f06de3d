// SPDX-License-Identifier: MIT
#include "sim/naive_tables.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "domain/log/value_json.h"
#include "domain/records/roster.h"
#include "sim/random.h"
#include "store/current_tables.h"
#include "store/reader.h"

namespace duskrow::sim {

using namespace duskrow::domain;

namespace {

Value valueOf(const Change& change, const std::string& field)
{
    return change.fields.at(field).value;
}

MergeClass mergeOf(const std::string& kind, const std::string& name)
{
    const RecordKind* known = findKind(kind);
    const Field* field = known != nullptr ? known->find(name) : nullptr;
    return field != nullptr ? field->merge : MergeClass::Label;
}

struct Meaning {
    std::map<std::string, Value> values;
    std::map<std::string, Changes> heads;
    std::set<std::string> differences;
    bool isBack = false;
};

Value joined(const Changes& heads, const std::string& field)
{
    std::set<std::string> texts;
    for (const Change* head : heads)
        if (const Value value = valueOf(*head, field); std::holds_alternative<std::string>(value))
            texts.insert(std::get<std::string>(value));
    std::string all;
    for (const std::string& text : texts) all += (all.empty() ? "" : "\n") + text;
    return all.empty() ? Value{} : Value{all};
}

void takeBack(Meaning& meaning)
{
    const auto found = meaning.values.find("withdrawn");
    if (found == meaning.values.end()) return;
    if (found->second == Value{std::string()}) found->second = Value{};
    if (isEmpty(found->second)) return;
    std::set<ChangeRef> seen;
    for (const Change* head : meaning.heads["withdrawn"]) {
        seen.insert(head->ref);
        seen.insert(head->saw.begin(), head->saw.end());
    }
    for (const auto& [field, heads] : meaning.heads)
        for (const Change* head : heads) meaning.isBack = meaning.isBack || !seen.contains(head->ref);
    if (meaning.isBack) found->second = Value{};
}

Meaning meaningOf(const Changes& counting)
{
    Meaning meaning;
    std::set<std::string> names;
    for (const Change* change : counting)
        for (const auto& [name, set] : change->fields) names.insert(name);
    for (const std::string& name : names) {
        const Changes heads = headsOf(counting, name);
        if (heads.empty()) continue;
        meaning.heads[name] = heads;
        std::set<Value> values;
        for (const Change* head : heads) values.insert(valueOf(*head, name));
        const MergeClass merge = mergeOf(counting.front()->kind, name);
        const bool differ = values.size() > 1;
        meaning.values[name] = differ && merge == MergeClass::Remark ? joined(heads, name) : *values.rbegin();
        if (differ && merge == MergeClass::Measured) meaning.differences.insert(name);
    }
    takeBack(meaning);
    return meaning;
}

std::string shown(const Field& field, const Value& value)
{
    if (field.type == FieldType::Id) {
        const Uuid id = parseUuid(std::get<std::string>(value)).value_or(Uuid{});
        return formatHex(id.bytes);
    }
    if (const auto* flag = std::get_if<bool>(&value)) return *flag ? "1" : "0";
    if (const auto* number = std::get_if<std::int64_t>(&value)) return std::to_string(*number);
    const auto* text = std::get_if<std::string>(&value);
    return text != nullptr ? *text : std::string();
}

std::string rowOf(const RecordKind& kind, const Uuid& record, const Meaning& meaning)
{
    std::string row = "now_" + std::string(kind.name) + " " + formatHex(record.bytes);
    std::map<std::string, Value> rest = meaning.values;
    for (const Field& field : kind.fields) {
        const auto found = rest.find(std::string(field.name));
        if (found == rest.end() || !canHold(field, found->second)) continue;
        if (!isEmpty(found->second)) row += " " + std::string(field.name) + "=" + shown(field, found->second);
        rest.erase(found);
    }
    nlohmann::json newer = nlohmann::json::object();
    for (const auto& [name, value] : rest)
        if (!isEmpty(value)) newer[name] = jsonOf(value);
    if (!newer.empty()) row += " newer=" + canonicalText(newer);
    return row + " brought_back=" + (meaning.isBack ? "1" : "0");
}

// By the record it is about: what the coordinator's newest word "stands" has seen.
using Rulings = std::map<Uuid, std::set<ChangeRef>>;

Rulings rulingsIn(const Uuid& programme, const NaiveRoster& roster, const std::map<Uuid, Changes>& records)
{
    Rulings rulings;
    for (const auto& [record, changes] : records) {
        if (changes.front()->kind != "ruling") continue;
        Uuid subject;
        for (const Change* change : changes) {
            const auto said = change->fields.find("record");
            const auto* text =
                said == change->fields.end() ? nullptr : std::get_if<std::string>(&said->second.value);
            const Uuid one = text != nullptr ? parseUuid(*text).value_or(Uuid{}) : Uuid{};
            if (!one.isNil() && rulingId(programme, one) == record) subject = one;
        }
        const Changes counting = roster.counting(changes);
        if (subject.isNil() || counting.empty()) continue;
        Meaning meaning = meaningOf(counting);
        if (!isEmpty(meaning.values["withdrawn"])) continue;
        if (meaning.values["says"] != Value{std::string("stands")}) continue;
        for (const Change* head : meaning.heads["says"])
            rulings[subject].insert(head->saw.begin(), head->saw.end());
        rulings[subject];
    }
    return rulings;
}

// Splits off the proposals. Returns whether the ruling is stale.
bool setProposalsApart(
    Changes& counting, Changes& proposals, const std::set<ChangeRef>& saw, const NaiveRoster& roster)
{
    std::set<ChangeRef> answered = saw;
    for (const Change* change : counting)
        if (roster.isCoordinator(change->ref.stream))
            for (const auto& [name, set] : change->fields) answered.insert(set.base.begin(), set.base.end());
    bool isStale = false;
    Changes left;
    for (const Change* change : counting) {
        isStale = isStale || !saw.contains(change->ref);
        const bool stays = roster.isCoordinator(change->ref.stream) || answered.contains(change->ref);
        (stays ? left : proposals).push_back(change);
    }
    counting = left;
    return isStale;
}

} // namespace

Text naiveTables(
    const Uuid& programme, const std::set<StreamId>& founders, const Changes& all, const StreamId& own)
{
    const NaiveRoster roster(programme, founders, all, own);
    std::map<Uuid, Changes> records;
    for (const Change* change : all) records[change->record].push_back(change);
    const Rulings rulings = rulingsIn(programme, roster, records);
    Text text;
    for (const auto& [record, changes] : records) {
        const std::string id = formatHex(record.bytes);
        Changes counting = roster.counting(changes);
        for (const Change* change : changes)
            if (std::find(counting.begin(), counting.end(), change) == counting.end())
                text.insert("aside " + id + " " + formatRef(change->ref));
        Changes proposals;
        const auto ruling = rulings.find(record);
        if (ruling != rulings.end() && setProposalsApart(counting, proposals, ruling->second, roster))
            text.insert("stale " + id);
        for (const Change* change : proposals) text.insert("proposal " + id + " " + formatRef(change->ref));
        const RecordKind* kind = findKind(changes.front()->kind);
        if (counting.empty()) continue;
        const Meaning meaning = meaningOf(counting);
        for (const std::string& field : meaning.differences) text.insert("difference " + id + " " + field);
        if (kind != nullptr) text.insert(rowOf(*kind, record, meaning));
    }
    return text;
}

Text tablesOf(store::Reader& reader)
{
    Text text;
    const auto each = [&](const std::string& sql, const std::function<std::string(SQLite::Statement&)>& row) {
        const auto done = reader.eachRow(sql, {}, [&](SQLite::Statement& q) { text.insert(row(q)); });
        if (!done) broken("tables cannot be read: " + done.error().detail);
    };
    for (const RecordKind* kind : recordKinds()) {
        const std::string columns = store::columnsOf(*kind);
        const auto row = [&](SQLite::Statement& query) {
            std::string line = "now_" + std::string(kind->name);
            for (int i = 0; i < query.getColumnCount(); ++i) {
                const SQLite::Column column = query.getColumn(i);
                if (column.isNull()) continue;
                if (i > 0) line += " " + std::string(column.getName()) + "=";
                if (i == 0) line += " ";
                line += column.isBlob() ? formatHex(store::uuidOf(column).bytes) : column.getString();
            }
            return line;
        };
        each("SELECT id," + columns + ",newer,brought_back FROM now_" + std::string(kind->name), row);
    }
    const auto idIn = [](SQLite::Statement& q) { return formatHex(store::uuidOf(q.getColumn(0)).bytes); };
    each("SELECT record, change, reason FROM now_aside", [&](SQLite::Statement& q) {
        const bool isProposal = q.getColumn(2).getString() == "proposal";
        return (isProposal ? "proposal " : "aside ") + idIn(q) + " " + q.getColumn(1).getString();
    });
    each("SELECT record, field FROM now_difference",
        [&](SQLite::Statement& q) { return "difference " + idIn(q) + " " + q.getColumn(1).getString(); });
    each("SELECT record FROM now_stale", [&](SQLite::Statement& q) { return "stale " + idIn(q); });
    return text;
}

std::string difference(const Text& expected, const Text& found)
{
    std::string text;
    int lines = 0;
    for (const std::string& line : expected)
        if (!found.contains(line) && ++lines < 9) text += "\n  expected " + line;
    for (const std::string& line : found)
        if (!expected.contains(line) && ++lines < 18) text += "\n  found    " + line;
    return text;
}

} // namespace duskrow::sim
