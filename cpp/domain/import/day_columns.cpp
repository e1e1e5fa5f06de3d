// SPDX-License-Identifier: MIT
#include "domain/import/day_columns.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "domain/base/plain_word.h"

namespace duskrow::domain {

namespace {

// The columns that are the same for all days, and behind them one for the day and one for the count.
RowTerms termsOfACell(RowTerms terms)
{
    for (MappedColumn& column : terms.map)
        if (isOfDay(column)) column.field = ImportField::Ignored;
    for (const ImportField field : {ImportField::Day, ImportField::Count})
        terms.map.push_back({{}, field, ColumnReason::DayHeading, {}, {}});
    return terms;
}

} // namespace

bool isDayHeading(const std::string& heading)
{
    if (weekInWords(heading)) return true;
    for (const DayOrder order : {DayOrder::DayFirst, DayOrder::MonthFirst}) {
        const auto day = parseTypedDay(heading, order);
        if (day || day.error().code == ErrorCode::YearOfTwoDigits
            || day.error().code == ErrorCode::YearUnsaid)
            return true;
    }
    return false;
}

std::optional<int> weekInWords(std::string_view words)
{
    constexpr std::size_t longest = 20; // bytes
    if (words.size() > longest) return std::nullopt;
    const std::string plain = plainHeading(words);
    const std::size_t digits = plain.find_first_of("0123456789");
    if (digits == std::string::npos) return std::nullopt;
    const std::string_view name = withoutBlanks(std::string_view(plain).substr(0, digits));
    constexpr std::array<std::string_view, 5> names{"week", "wk", "w", "semaine", "sem"};
    if (std::find(names.begin(), names.end(), name) == names.end()) return std::nullopt;
    int week = 0;
    const char* const end = plain.data() + plain.size();
    const auto read = std::from_chars(plain.data() + digits, end, week);
    if (read.ec != std::errc{} || read.ptr != end || week < 1 || week > 53) return std::nullopt;
    return week;
}

bool isOfDay(const MappedColumn& column)
{
    return column.reason == ColumnReason::DayHeading;
}

bool isWide(const ColumnMap& map)
{
    return std::any_of(map.begin(), map.end(), isOfDay);
}

void findDayColumns(ColumnMap& map)
{
    const auto isLong = [](const MappedColumn& column) {
        const ImportField field = column.reason == ColumnReason::Doubtful ? column.meant : column.field;
        return field == ImportField::Day || field == ImportField::Count;
    };
    if (std::any_of(map.begin(), map.end(), isLong)) return;
    for (MappedColumn& column : map) {
        if (column.reason != ColumnReason::Unknown || !isDayHeading(column.heading)) continue;
        column.field = ImportField::Count;
        column.reason = ColumnReason::DayHeading;
    }
}

WideRowReader::WideRowReader(const RowTerms& terms)
    : m_columns(terms.map.size()), m_reader(termsOfACell(terms))
{
    for (std::size_t i = 0; i < m_columns; ++i)
        if (isOfDay(terms.map[i])) m_days.push_back({i, terms.map[i].heading});
}

void WideRowReader::read(
    std::size_t line, std::vector<std::string> cells, std::vector<CountRow>& rows, RowWords& refused)
{
    // A cell too many stays behind the two.
    if (cells.size() < m_columns) cells.resize(m_columns);
    cells.insert(cells.begin() + static_cast<std::ptrdiff_t>(m_columns), 2, std::string());
    for (const OfDay& ofDay : m_days) {
        if (withoutBlanks(cells[ofDay.column]).empty()) continue;
        cells[m_columns] = ofDay.heading;
        cells[m_columns + 1] = cells[ofDay.column];
        for (const std::size_t added : {m_columns, m_columns + 1}) m_reader.nameColumn(added, ofDay.heading);
        const std::size_t before = refused.words.size();
        if (m_reader.read(line, cells, rows, refused)) continue;
        if (refused.words.size() > before && refused.words.back().column != ofDay.heading) return;
    }
}

} // namespace duskrow::domain
