// SPDX-License-Identifier: MIT
#include "tool/record_tables.h"

#include <algorithm>
#include <optional>

#include "domain/records/bulletin.h"
#include "domain/records/programme.h"
#include "domain/records/trap.h"
#include "domain/records/visit.h"
#include "domain/records/walk.h"
#include "domain/records/weather.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

formats::Cell cellOf(const Value& value)
{
    if (const auto* text = std::get_if<std::string>(&value)) return *text;
    if (const auto* number = std::get_if<std::int64_t>(&value)) return std::to_string(*number);
    if (const auto* flag = std::get_if<bool>(&value)) return std::string(*flag ? "true" : "false");
    if (const auto* raw = std::get_if<RawJson>(&value)) return raw->text;
    return std::nullopt;
}

std::string fileName(const RecordKind& kind)
{
    std::string name = std::string(kind.name) + 's';
    std::replace(name.begin(), name.end(), '_', '-');
    return name;
}

template <typename R>
std::optional<Error> addTables(store::Reader& reader, std::vector<formats::Table>& tables)
{
    const RecordKind& kind = kindOf<R>();
    store::Selection all;
    all.withWithdrawn = true;
    const auto records = reader.select<R>(all);
    if (!records) return records.error();
    formats::Table table;
    table.name = fileName(kind);
    table.header.emplace_back("id");
    for (const Field& field : kind.fields) table.header.emplace_back(field.name);
    for (const R& record : *records) {
        std::vector<formats::Cell> row{formatUuid(record.id)};
        for (const Field& field : kind.fields) row.push_back(cellOf(field.get(record)));
        table.rows.push_back(std::move(row));
    }
    tables.push_back(std::move(table));
    return std::nullopt;
}

template <typename... Kinds>
Result<std::vector<formats::Table>> tablesOf(store::Reader& reader)
{
    std::vector<formats::Table> tables;
    std::optional<Error> failed;
    ((failed = failed ? failed : addTables<Kinds>(reader, tables)), ...);
    if (failed) return *failed;
    return tables;
}

} // namespace

Result<std::vector<formats::Table>> recordTables(store::Reader& reader)
{
    return tablesOf<Programme, Season, District, ProtocolUse, Member, Site, Trap, Service, Loan, Visit,
        Sample, Walk, Frame, Decision, Station, Temperature, PublishedBulletin>(reader);
}

} // namespace duskrow::tool
