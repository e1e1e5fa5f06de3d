// SPDX-License-Identifier: MIT
#include "domain/import/count_row.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "domain/base/plain_word.h"
#include "domain/import/day_columns.h"
#include "domain/rules/reporting_week.h"
#include "domain/rules/typed_money.h"
#include "domain/rules/typed_place.h"

namespace duskrow::domain {

namespace {

constexpr std::int64_t mostMothsCounted = 999'999; // as in the record of a visit
constexpr std::int64_t longestPeriod = 400;
constexpr std::size_t longestName = 200; // bytes, as in the records
constexpr std::size_t longestRemark = 40'000;
constexpr double tallestCanopy = 10'000; // mm, as in the records

bool isDigits(std::string_view text)
{
    return !text.empty()
        && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

// Digits, or digits with nothing but zeros behind the table's decimal mark, as some programs write whole
// numbers. Three zeros may as well be thousands.
Result<std::int64_t> wholeCell(
    std::string_view cell, std::string_view field, std::int64_t high, std::optional<DecimalMark> mark)
{
    const std::string typed(cell.substr(0, 80));
    std::string_view digits = cell;
    if (const auto at = cell.find_first_of(".,"); at != std::string_view::npos && at > 0) {
        const std::string_view behind = cell.substr(at + 1);
        if (!isDigits(cell.substr(0, at)) || !isDigits(behind)) return Error{ErrorCode::NotANumber, {typed}};
        if (!mark) return Error{ErrorCode::DecimalMarkUnsaid, {typed}};
        const bool isDecimal = (cell[at] == '.') == (mark == DecimalMark::Point) && behind.size() != 3;
        if (!isDecimal) return Error{ErrorCode::NotANumber, {typed}};
        if (behind.find_first_not_of('0') != std::string_view::npos)
            return Error{ErrorCode::NotWhole, {typed}};
        digits = cell.substr(0, at);
    }
    const bool isNegative = digits.starts_with('-');
    if (isNegative) digits.remove_prefix(1);
    if (!isDigits(digits)) return Error{ErrorCode::NotANumber, {typed}};
    std::int64_t number = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    if (read.ec != std::errc{} || number > high || (isNegative && number > 0))
        return Error{ErrorCode::OutOfRange, {std::string(field), "0", std::to_string(high)}};
    return number;
}

Result<Millimetres> heightCell(
    const MappedColumn& column, std::string_view cell, std::optional<DecimalMark> mark)
{
    const std::string code(rowOf(column.field).code);
    if (!column.unit) return Error{ErrorCode::UnitUnsaid, {code}};
    if (const auto at = cell.find_first_of(".,"); at != std::string_view::npos) {
        if (!mark) return Error{ErrorCode::DecimalMarkUnsaid, {std::string(cell.substr(0, 80))}};
        if ((cell[at] == '.') != (mark == DecimalMark::Point))
            return Error{ErrorCode::NotANumber, {std::string(cell.substr(0, 80))}};
    }
    const double unit = millimetresIn(*column.unit);
    const auto typed = parseDecimal(cell, code, 0, tallestCanopy / unit);
    if (!typed) return typed.error();
    return Millimetres{std::llround(*typed * unit)};
}

// Yes or no in English or French, or as programs write it.
Result<bool> flagCell(std::string_view cell)
{
    const std::string word = plainWord(std::string(cell.substr(0, 80)));
    for (const std::string_view yes : {"yes", "y", "true", "1", "oui", "o", "vrai"})
        if (word == yes) return true;
    for (const std::string_view no : {"no", "n", "false", "0", "non", "faux"})
        if (word == no) return false;
    return Error{ErrorCode::UnknownCode, {"emptied", std::string(cell.substr(0, 80)), "yes, no"}};
}

} // namespace

// One row while it is read: the first thing that cannot be read is kept, the rest is passed over.
struct RowReader::Reading {
    const RowReader& reader;
    const std::vector<std::string>& cells;
    CountRow& row;
    std::optional<Error> error = {};
    std::optional<std::size_t> column = {};

    std::string_view at(ImportField field)
    {
        const auto found = reader.at(field);
        return reader.cell(cells, found);
    }
    void refuse(ImportField field, Error why)
    {
        if (error) return;
        error = std::move(why);
        column = reader.at(field);
    }
    template <typename T, typename U>
    void put(ImportField field, Result<T> read, U& place)
    {
        if (read)
            place = U(*read);
        else
            refuse(field, read.error());
    }

    void text(ImportField field, std::string& place, std::size_t most)
    {
        const std::string_view cell = at(field);
        const auto code = [field] { return std::string(rowOf(field).code); };
        if (cell.size() > most) return refuse(field, {ErrorCode::TooLong, {code(), std::to_string(most)}});
        if (!isPlainText(cell)) return refuse(field, {ErrorCode::TextUnreadable, {code()}});
        place.assign(cell);
    }
    void number(ImportField field, std::int64_t most, auto& place)
    {
        const std::string_view cell = at(field);
        if (!cell.empty())
            put(field, wholeCell(cell, rowOf(field).code, most, reader.m_terms.decimalMark), place);
    }
    void day(ImportField field, std::optional<int> year, std::optional<LocalDay>& place)
    {
        const std::string_view cell = at(field);
        if (!cell.empty()) put(field, parseTypedDay(cell, reader.m_terms.dayOrder, year), place);
    }
    void height(ImportField field, std::optional<Millimetres>& place)
    {
        const std::string_view cell = at(field);
        if (cell.empty()) return;
        put(field, heightCell(reader.m_terms.map[*reader.at(field)], cell, reader.m_terms.decimalMark),
            place);
    }

    void flag(ImportField field, std::optional<bool>& place)
    {
        const std::string_view cell = at(field);
        if (!cell.empty()) put(field, flagCell(cell), place);
    }

    void needed(ImportField field)
    {
        if (at(field).empty()) refuse(field, {ErrorCode::Empty, {std::string(rowOf(field).code)}});
    }
    void days();
    void place();
    // The last day of the programme's week with this number. Errors  YearUnsaid, OutOfRange
    [[nodiscard]] Result<LocalDay> endOfWeek(int week, std::optional<int> year) const
    {
        if (!year) return Error{ErrorCode::YearUnsaid, {}};
        const auto start = isoWeekday(reader.m_terms.weekStart.value_or(1));
        if (!start) return start.error();
        const auto found = weekFromIso({*year, week}, *start);
        if (!found) return found.error();
        return found->last;
    }
};

void RowReader::Reading::days()
{
    using enum ImportField;
    std::optional<int> year = reader.m_terms.year;
    if (const std::string_view cell = at(Year); !cell.empty()) {
        std::int64_t typed = 0;
        put(Year, wholeCell(cell, "year", 2200, reader.m_terms.decimalMark), typed);
        if (!error && typed < 1900) refuse(Year, {ErrorCode::OutOfRange, {"year", "1900", "2200"}});
        if (!error && year && typed != *year)
            refuse(Year, {ErrorCode::DayOutsideYear, {std::string(cell), std::to_string(*year)}});
        year = static_cast<int>(typed);
    }
    if (error) return;
    std::string_view cell = at(Day);
    // A period of Darwin Core: 2026-06-08/2026-06-15.
    if (const auto slash = cell.find('/'); slash == 10 && cell.size() == 21) {
        put(Day, parseDay(cell.substr(0, slash)), row.fromDay);
        cell = cell.substr(slash + 1);
    }
    if (const auto week = weekInWords(cell))
        put(Day, endOfWeek(*week, year), row.day);
    else
        put(Day, parseTypedDay(cell, reader.m_terms.dayOrder, year), row.day);
    if (error) return;
    row.year = yearOf(row.day);
    if (row.year < 1900 || row.year > 2200)
        return refuse(Day, {ErrorCode::OutOfRange, {"year", "1900", "2200"}});
    if (year && row.year != *year)
        return refuse(Day, {ErrorCode::DayOutsideYear, {formatDay(row.day), std::to_string(*year)}});
    day(FromDay, row.year, row.fromDay);
    day(SetDay, row.year, row.setDay);
    number(PeriodNights, longestPeriod, row.nights);
    if (row.fromDay && *row.fromDay > row.day)
        refuse(FromDay, {ErrorCode::OutOfRange, {"from_day", "1900-01-01", formatDay(row.day)}});
    if (row.setDay && *row.setDay > row.day)
        refuse(SetDay, {ErrorCode::OutOfRange, {"set_day", "1900-01-01", formatDay(row.day)}});
    if (row.nights && !row.fromDay) row.fromDay = row.day - std::chrono::days{*row.nights};
}

void RowReader::Reading::place()
{
    using enum ImportField;
    const std::string_view latitude = at(Latitude);
    const std::string_view longitude = at(Longitude);
    if (latitude.empty() && longitude.empty()) return;
    if (latitude.empty() || longitude.empty()) {
        const ImportField missing = latitude.empty() ? Latitude : Longitude;
        return refuse(missing, {ErrorCode::Empty, {std::string(rowOf(missing).code)}});
    }
    put(Latitude, parsePlace(latitude, longitude), row.place);
}

RowReader::RowReader(RowTerms terms)
    : m_terms(std::move(terms)), m_columns(static_cast<std::size_t>(ImportField::Remark) + 1)
{
    for (std::size_t i = 0; i < m_terms.map.size(); ++i)
        if (m_terms.map[i].field != ImportField::Ignored)
            m_columns[static_cast<std::size_t>(m_terms.map[i].field)] = i;
}

std::string_view RowReader::cell(
    const std::vector<std::string>& cells, const std::optional<std::size_t>& column) const
{
    return column && *column < cells.size() ? withoutBlanks(cells[*column]) : std::string_view{};
}

bool RowReader::read(std::size_t line, const std::vector<std::string>& cells, std::vector<CountRow>& rows,
    RowWords& refused) const
{
    const auto isBlank = [](const std::string& cell) { return withoutBlanks(cell).empty(); };
    if (std::all_of(cells.begin(), cells.end(), isBlank)) return false;
    using enum ImportField;
    Reading reading{*this, cells, rows.emplace_back()};
    reading.row.line = line;
    // A cell too many means that all behind some delimiter stand in the wrong column.
    for (std::size_t i = m_terms.map.size(); i < cells.size(); ++i)
        if (!isBlank(cells[i])) reading.error = Error{ErrorCode::TableUnreadable, {std::to_string(line)}};
    for (const ImportField field : {Site, Day, Count}) reading.needed(field);
    if (!reading.error) reading.days();
    reading.number(Count, mostMothsCounted, reading.row.pest);
    reading.number(NotIt, mostMothsCounted, reading.row.notIt);
    reading.number(BumbleBees, mostMothsCounted, reading.row.bees);
    reading.text(District, reading.row.district, longestName);
    reading.text(Site, reading.row.site, longestName);
    reading.text(Trap, reading.row.tag, longestName);
    reading.text(Observer, reading.row.observer, longestName);
    reading.text(FieldName, reading.row.field, longestName);
    reading.text(Crop, reading.row.crop, longestName);
    reading.text(Remark, reading.row.remark, longestRemark);
    reading.height(Entrance, reading.row.entrance);
    reading.height(Canopy, reading.row.canopy);
    reading.flag(Emptied, reading.row.emptied);
    reading.place();
    if (!reading.error) return true;
    rows.pop_back();
    const auto& column = reading.column;
    refused.add({line, column ? m_terms.map[*column].heading : std::string(), std::move(*reading.error)});
    return false;
}

} // namespace duskrow::domain
