// SPDX-License-Identifier: MIT
#include "domain/rules/typed_day.h"

#include <array>
#include <charconv>
#include <utility>

#include "domain/base/plain_word.h"

namespace duskrow::domain {

namespace {

constexpr std::size_t longestDay = 40;

struct MonthName {
    std::string_view name;
    unsigned month;
};

// English and French, with and without accents.
constexpr std::array<MonthName, 26> months{{{"january", 1}, {"janvier", 1}, {"february", 2}, {"février", 2},
    {"fevrier", 2}, {"march", 3}, {"mars", 3}, {"april", 4}, {"avril", 4}, {"may", 5}, {"mai", 5},
    {"june", 6}, {"juin", 6}, {"july", 7}, {"juillet", 7}, {"august", 8}, {"août", 8}, {"aout", 8},
    {"september", 9}, {"october", 10}, {"octobre", 10}, {"november", 11}, {"novembre", 11}, {"december", 12},
    {"décembre", 12}, {"decembre", 12}}};
constexpr std::string_view frenchSeptember = "septembre";

struct Part {
    std::string_view text;
    std::optional<unsigned> number; // else it is a word
};

struct DayParts {
    std::array<Part, 3> part;
    std::size_t count = 0;
};

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

bool isBetween(char c)
{
    return c == '-' || c == '/' || c == '.' || c == ',' || c == ' ';
}

// Spreadsheets give a day as the midnight with which it begins.
std::string_view withoutMidnight(std::string_view text)
{
    for (const std::string_view midnight :
        {"T00:00:00Z", "T00:00:00", " 00:00:00", " 0:00:00", " 00:00", " 0:00"})
        if (text.ends_with(midnight)) return withoutBlanks(text.substr(0, text.size() - midnight.size()));
    return text;
}

// Two or three runs of digits or letters; nothing when there are other signs, or more or fewer runs.
std::optional<DayParts> dayPartsOf(std::string_view text)
{
    DayParts parts;
    while (!text.empty()) {
        const bool isNumber = isDigit(text.front());
        std::size_t end = 0;
        while (end < text.size() && !isBetween(text[end]) && isDigit(text[end]) == isNumber) ++end;
        if (end == 0 || parts.count == parts.part.size()) return std::nullopt;
        Part& part = parts.part[parts.count++];
        part.text = text.substr(0, end);
        if (isNumber) {
            unsigned number = 0;
            if (end > 4 || std::from_chars(text.data(), text.data() + end, number).ec != std::errc{})
                return std::nullopt;
            part.number = number;
        }
        text.remove_prefix(end);
        std::size_t between = 0;
        while (between < text.size() && isBetween(text[between])) ++between;
        if (between > 2 || (between > 0 && between == text.size())) return std::nullopt;
        text.remove_prefix(between);
    }
    if (parts.count < 2) return std::nullopt;
    return parts;
}

// A name or the beginning of one, of three letters or more; nothing when it may be two months.
std::optional<unsigned> monthNamed(std::string_view word)
{
    std::string lower;
    for (const char c : word) lower += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    if (lower.size() < 3) return std::nullopt;
    if (frenchSeptember.starts_with(lower)) return 9;
    std::optional<unsigned> found;
    for (const auto& [name, month] : months) {
        if (!name.starts_with(lower)) continue;
        if (found && *found != month) return std::nullopt;
        found = month;
    }
    return found;
}

Result<LocalDay> made(
    const std::string& typed, const Part& yearPart, unsigned month, unsigned day, std::optional<int> ofTable)
{
    int year = static_cast<int>(yearPart.number.value_or(0));
    if (yearPart.text.size() == 2) {
        if (!ofTable || *ofTable % 100 != year) return Error{ErrorCode::YearOfTwoDigits, {typed}};
        year = *ofTable;
    } else if (yearPart.text.size() != 4) {
        return Error{ErrorCode::NotADay, {typed}};
    }
    const std::chrono::year_month_day ymd{
        std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{day}};
    if (!ymd.ok()) return Error{ErrorCode::NotADay, {typed}};
    return LocalDay{ymd};
}

// Numbers with the year behind: the only days that need an order.
bool needsOrder(const DayParts& parts)
{
    return parts.count == 3 && parts.part[0].number && parts.part[1].number && parts.part[2].number
        && parts.part[0].text.size() <= 2 && parts.part[1].text.size() <= 2 && parts.part[2].text.size() != 3;
}

std::optional<DayParts> readDayParts(std::string_view typed)
{
    if (typed.size() > longestDay) return std::nullopt;
    return dayPartsOf(withoutMidnight(withoutBlanks(typed)));
}

// 20260714
std::string withDashes(std::string_view typed)
{
    std::string text(withoutBlanks(typed));
    bool isRun = text.size() == 8;
    for (const char c : text) isRun = isRun && isDigit(c);
    return isRun ? text.substr(0, 4) + '-' + text.substr(4, 2) + '-' + text.substr(6) : text;
}

} // namespace

namespace {

// 14 Jul, 14-Jul, July 14: in the year of the table. "Jul-14" may be July of a year 14, and two numbers may
// be anything.
Result<LocalDay> withoutYear(
    std::string_view text, const DayParts& parts, std::optional<int> year, const Error& refused)
{
    const auto& first = parts.part[0];
    const auto& second = parts.part[1];
    if (first.number.has_value() == second.number.has_value()) return refused;
    if (!first.number && text.find_first_of("-/.") != std::string_view::npos) return refused;
    const auto month = monthNamed(first.number ? second.text : first.text);
    const Part& day = first.number ? first : second;
    if (!month || day.text.size() > 2) return refused;
    if (!year) return Error{ErrorCode::YearUnsaid, {}};
    const std::chrono::year_month_day ymd{
        std::chrono::year{*year}, std::chrono::month{*month}, std::chrono::day{*day.number}};
    return ymd.ok() ? Result<LocalDay>(LocalDay{ymd}) : Result<LocalDay>(refused);
}

} // namespace

Result<LocalDay> parseTypedDay(std::string_view typed, std::optional<DayOrder> order, std::optional<int> year)
{
    if (typed.size() == 10 && typed[4] == '-') // ISO 8601, as most programs write it
        if (const auto day = parseDay(typed)) return *day;
    const std::string text = withDashes(typed);
    const Error refused{ErrorCode::NotADay, {std::string(typed.substr(0, longestDay))}};
    const auto parts = readDayParts(text);
    if (!parts) return refused;
    if (parts->count == 2) return withoutYear(text, *parts, year, refused);
    const auto& [first, second, third] = parts->part;
    if (!third.number) return refused;
    if (!second.number && first.number) { // 14 Jul 2026
        const auto month = monthNamed(second.text);
        return month ? made(text, third, *month, *first.number, year) : Result<LocalDay>(refused);
    }
    if (!first.number && second.number) { // July 14, 2026
        const auto month = monthNamed(first.text);
        return month ? made(text, third, *month, *second.number, year) : Result<LocalDay>(refused);
    }
    if (!first.number || !second.number) return refused;
    if (first.text.size() == 4) return made(text, first, *second.number, *third.number, year);
    if (!needsOrder(*parts)) return refused;
    if (!order && *first.number != *second.number) return Error{ErrorCode::DayOrderUnsaid, {text}};
    const bool isDayFirst = order != DayOrder::MonthFirst;
    return made(text, third, isDayFirst ? *second.number : *first.number,
        isDayFirst ? *first.number : *second.number, year);
}

void DayOrderSurvey::take(std::string_view typed)
{
    const auto parts = readDayParts(typed);
    if (!parts || !needsOrder(*parts)) return;
    const unsigned first = *parts->part[0].number;
    const unsigned second = *parts->part[1].number;
    if (first > 31 || second > 31 || (first > 12 && second > 12) || first == second) return;
    std::string& place = first > 12 ? m_dayFirst : second > 12 ? m_monthFirst : m_either;
    if (place.empty()) place = withoutBlanks(typed);
}

DayOrderFinding DayOrderSurvey::finding() const
{
    if (!m_dayFirst.empty() && !m_monthFirst.empty())
        return {std::nullopt, DayOrderReason::Both, m_dayFirst, m_monthFirst};
    if (!m_dayFirst.empty()) return {DayOrder::DayFirst, DayOrderReason::Shown, m_dayFirst};
    if (!m_monthFirst.empty()) return {DayOrder::MonthFirst, DayOrderReason::Shown, m_monthFirst};
    if (!m_either.empty()) return {std::nullopt, DayOrderReason::Ambiguous, m_either};
    return {};
}

} // namespace duskrow::domain
