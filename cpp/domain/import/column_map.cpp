// SPDX-License-Identifier: MIT
#include "domain/import/column_map.h"

#include <algorithm>
#include <charconv>

#include "domain/base/plain_word.h"
#include "domain/import/day_columns.h"

namespace duskrow::domain {

namespace {

constexpr std::size_t longestHeading = 200; // bytes; beyond it is no heading

bool isHeight(ImportField field)
{
    return field == ImportField::Entrance || field == ImportField::Canopy;
}

std::optional<ImportField> fieldMeant(const std::string& plain)
{
    for (const ImportFieldRow& row : importFields()) {
        if (plain == row.code) return row.field;
        for (const std::string_view heading : row.headings)
            if (plain == heading) return row.field;
    }
    return importFieldNamed(plain);
}

MappedColumn guessed(const std::string& heading)
{
    MappedColumn column;
    column.heading = withoutBlanks(heading);
    if (heading.size() > longestHeading) return column;
    std::string plain = plainHeading(heading);
    if (const auto space = plain.rfind(' '); space != std::string::npos)
        if (const auto unit = heightUnitNamed(std::string_view(plain).substr(space + 1))) {
            const auto field = fieldMeant(plain.substr(0, space));
            if (field && isHeight(*field)) {
                column.unit = unit;
                plain.resize(space);
            }
        }
    const auto field = fieldMeant(plain);
    if (!field || *field == ImportField::Ignored) return column;
    column.field = *field;
    column.reason = ColumnReason::Heading;
    return column;
}

// The columns that a choice names: by heading, else by number.
std::vector<std::size_t> named(const std::vector<std::string>& header, const std::string& column)
{
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < header.size(); ++i)
        if (plainWord(header[i]) == plainWord(column)) found.push_back(i);
    std::size_t number = 0;
    const char* const end = column.data() + column.size();
    const auto read = std::from_chars(column.data(), end, number);
    if (found.empty() && read.ec == std::errc{} && read.ptr == end && number >= 1 && number <= header.size())
        found.push_back(number - 1);
    return found;
}

std::string knownCodes()
{
    std::string all = "ignore";
    for (const ImportFieldRow& row : importFields()) all += ", " + std::string(row.code);
    return all;
}

Result<Done> choose(ColumnMap& map, const std::vector<std::string>& header, const ColumnChoice& choice)
{
    const std::size_t colon = choice.field.find(':');
    const std::string code = choice.field.substr(0, colon);
    const auto field = importFieldNamed(code);
    if (!field) return Error{ErrorCode::UnknownCode, {"column", code, knownCodes()}};
    const auto found = named(header, choice.column);
    if (found.empty()) return Error{ErrorCode::ColumnMissing, {choice.column}};
    if (found.size() > 1) return Error{ErrorCode::NameAmbiguous, {"column", choice.column}};
    MappedColumn& column = map[found.front()];
    if (colon != std::string::npos) {
        const std::string unit = choice.field.substr(colon + 1);
        column.unit = heightUnitNamed(unit);
        if (!column.unit) return Error{ErrorCode::UnknownCode, {"unit", unit, "mm, cm, m, in, ft"}};
    }
    column.field = *field;
    column.reason = ColumnReason::Chosen;
    return Done{};
}

} // namespace

Result<ColumnMap> columnMap(const std::vector<std::string>& header, const std::vector<ColumnChoice>& choices)
{
    ColumnMap map;
    for (const std::string& heading : header) map.push_back(guessed(heading));
    for (const ColumnChoice& choice : choices)
        if (const auto chosen = choose(map, header, choice); !chosen) return chosen.error();
    for (const ImportFieldRow& row : importFields()) {
        const auto is = [&](const MappedColumn& c) { return c.field == row.field; };
        const auto isChosen = [&](const MappedColumn& c) {
            return is(c) && c.reason == ColumnReason::Chosen;
        };
        const auto chosen = std::count_if(map.begin(), map.end(), isChosen);
        if (chosen > 1) return Error{ErrorCode::ColumnTwice, {std::string(row.code)}};
        if (std::count_if(map.begin(), map.end(), is) < 2) continue;
        for (MappedColumn& column : map)
            if (is(column) && !isChosen(column))
                column = {
                    column.heading, ImportField::Ignored, ColumnReason::Doubtful, row.field, column.unit};
    }
    return map;
}

std::optional<std::size_t> columnOf(const ColumnMap& map, ImportField field)
{
    for (std::size_t i = 0; i < map.size(); ++i)
        if (map[i].field == field) return i;
    return std::nullopt;
}

Result<Done> checkNeeded(const ColumnMap& map)
{
    using enum ImportField;
    for (const MappedColumn& column : map)
        if (column.reason == ColumnReason::Doubtful && !columnOf(map, column.meant))
            return Error{ErrorCode::ColumnTwice, {std::string(rowOf(column.meant).code)}};
    const bool hasDays = std::any_of(
        map.begin(), map.end(), [](const auto& c) { return c.reason == ColumnReason::DayHeading; });
    for (const ImportField field : {Site, Day, Count})
        if (!columnOf(map, field) && !(hasDays && field == Day))
            return Error{ErrorCode::ColumnMissing, {std::string(rowOf(field).code)}};
    // A first row of counts would be taken for the names of the columns, and be lost.
    if (const auto day = columnOf(map, Day); day && isDayHeading(map[*day].heading))
        return Error{ErrorCode::ColumnMissing, {std::string(rowOf(Day).code), map[*day].heading}};
    if (columnOf(map, Latitude).has_value() != columnOf(map, Longitude).has_value())
        return Error{ErrorCode::ColumnMissing, {columnOf(map, Latitude) ? "longitude" : "latitude"}};
    return Done{};
}

} // namespace duskrow::domain
