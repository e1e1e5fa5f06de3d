// SPDX-License-Identifier: MIT
#include "domain/import/temperature_table.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "domain/base/plain_word.h"

namespace duskrow::domain {

namespace {

constexpr std::array<std::string_view, 3> codes{"date", "minimum", "maximum"};
constexpr std::array<std::string_view, 7> dayHeadings{
    "date", "day", "jour", "local date", "date time", "datetime", "observation date"};
constexpr std::array<std::string_view, 12> minimumHeadings{"tmin", "t min", "min", "minimum", "min temp",
    "temp min", "minimum temperature", "temperature min", "low", "tmn", "temperature minimale",
    "temp minimale"};
constexpr std::array<std::string_view, 12> maximumHeadings{"tmax", "t max", "max", "maximum", "max temp",
    "temp max", "maximum temperature", "temperature max", "high", "tmx", "temperature maximale",
    "temp maximale"};

// The sign of a degree counts as a blank: "Tmax (°F)".
std::string plainOf(std::string heading)
{
    for (const std::string_view sign : {"\xC2\xB0", "\xC2\xBA"})
        for (std::size_t at = heading.find(sign); at != std::string::npos; at = heading.find(sign, at))
            heading.replace(at, sign.size(), " ");
    return plainHeading(heading);
}

// The heading without a unit behind it.
std::string bareHeading(const std::string& heading)
{
    std::string plain = plainOf(heading);
    for (const std::string_view unit : {" degrees celsius", " degrees fahrenheit", " celsius", " fahrenheit",
             " deg c", " deg f", " degc", " degf", " c", " f"})
        if (plain.size() > unit.size() && plain.ends_with(unit)) {
            plain.resize(plain.size() - unit.size());
            break;
        }
    return std::string(withoutBlanks(plain));
}

std::optional<std::size_t> meant(const std::string& heading)
{
    const std::string bare = bareHeading(heading);
    const auto holds = [&](const auto& words) {
        return std::find(words.begin(), words.end(), bare) != words.end();
    };
    if (holds(dayHeadings)) return 0;
    if (holds(minimumHeadings)) return 1;
    return holds(maximumHeadings) ? std::optional<std::size_t>(2) : std::nullopt;
}

std::optional<std::size_t> columnNamed(const std::vector<std::string>& header, const std::string& column)
{
    for (std::size_t i = 0; i < header.size(); ++i)
        if (plainWord(header[i]) == plainWord(column)) return i;
    std::size_t number = 0;
    const auto read = std::from_chars(column.data(), column.data() + column.size(), number);
    const bool isNumber = read.ec == std::errc{} && read.ptr == column.data() + column.size();
    return isNumber && number >= 1 && number <= header.size() ? std::optional(number - 1) : std::nullopt;
}

bool isBlank(std::string_view cell)
{
    const std::string plain = plainWord(withoutBlanks(cell));
    return plain.empty() || plain == "na" || plain == "m" || plain == "-" || plain == "nan"
        || plain == "null";
}

Result<double> numberOf(std::string_view cell, std::optional<DecimalMark> mark)
{
    std::string text(withoutBlanks(cell));
    if (text.starts_with("\xE2\x88\x92")) text.replace(0, 3, "-"); // the sign that typesetters use
    if (text.starts_with('+')) text.erase(0, 1);
    if (mark == DecimalMark::Comma) std::replace(text.begin(), text.end(), ',', '.');
    double value = 0.0;
    const char* const end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, value, std::chars_format::fixed);
    if (text.empty() || read.ec != std::errc{} || read.ptr != end || !std::isfinite(value))
        return Error{ErrorCode::NotANumber, {std::string(withoutBlanks(cell))}};
    return value;
}

} // namespace

Result<TemperatureColumns> temperatureColumns(
    const std::vector<std::string>& header, const std::vector<ColumnChoice>& chosen)
{
    std::array<std::vector<std::size_t>, 3> found;
    for (std::size_t i = 0; i < header.size(); ++i)
        if (const auto what = meant(header[i])) found[*what].push_back(i);
    for (const ColumnChoice& choice : chosen) {
        const auto* code = std::find(codes.begin(), codes.end(), choice.field);
        if (code == codes.end())
            return Error{ErrorCode::UnknownCode, {"column", choice.field, "date, minimum, maximum"}};
        const auto at = columnNamed(header, choice.column);
        if (!at) return Error{ErrorCode::ColumnMissing, {choice.column}};
        for (auto& columns : found) std::erase(columns, *at);
        found[static_cast<std::size_t>(code - codes.begin())] = {*at};
    }
    for (std::size_t i = 0; i < codes.size(); ++i) {
        if (found[i].empty()) return Error{ErrorCode::ColumnMissing, {std::string(codes[i])}};
        if (found[i].size() > 1) return Error{ErrorCode::ColumnTwice, {std::string(codes[i])}};
    }
    return TemperatureColumns{found[0].front(), found[1].front(), found[2].front()};
}

std::optional<HeatUnit> scaleSaid(const std::string& heading)
{
    const std::string plain = ' ' + plainOf(heading);
    for (const std::string_view word : {" f", " degf", " fahrenheit"})
        if (plain.ends_with(word)) return HeatUnit::Fahrenheit;
    for (const std::string_view word : {" c", " degc", " celsius"})
        if (plain.ends_with(word)) return HeatUnit::Celsius;
    return std::nullopt;
}

TemperatureSurvey::TemperatureSurvey(
    const std::vector<std::string>& header, const TemperatureColumns& columns)
    : m_columns(columns)
{
    for (const std::size_t column : {columns.minimum, columns.maximum})
        if (const auto unit = scaleSaid(header[column]))
            m_scale = {unit, ScaleReason::Heading, header[column]};
}

void TemperatureSurvey::take(const std::vector<std::string>& cells)
{
    if (m_columns.day < cells.size()) m_days.take(cells[m_columns.day]);
    for (const std::size_t column : {m_columns.minimum, m_columns.maximum})
        if (column < cells.size()) takeNumber(cells[column]);
}

void TemperatureSurvey::takeNumber(const std::string& cell)
{
    const bool hasComma = cell.find(',') != std::string::npos;
    const auto value = numberOf(cell, hasComma ? DecimalMark::Comma : DecimalMark::Point);
    if (!value) return;
    if (hasComma && m_comma.empty()) m_comma = withoutBlanks(cell);
    if (cell.find('.') != std::string::npos && m_point.empty()) m_point = withoutBlanks(cell);
    m_warmest = std::max(m_warmest, *value);
    if (!m_scale.unit && *value > warmestCelsius)
        m_scale = {HeatUnit::Fahrenheit, ScaleReason::Values, std::string(withoutBlanks(cell))};
}

DecimalFinding TemperatureSurvey::decimalMark() const
{
    if (!m_point.empty() && !m_comma.empty()) return {std::nullopt, DecimalReason::Both, m_point, m_comma};
    if (!m_point.empty()) return {DecimalMark::Point, DecimalReason::Shown, m_point};
    if (!m_comma.empty()) return {DecimalMark::Comma, DecimalReason::Shown, m_comma};
    return {};
}

ScaleFinding TemperatureSurvey::scale() const
{
    return m_scale;
}

std::optional<TemperatureRow> readTemperatureRow(
    const TemperatureTerms& terms, std::size_t line, const std::vector<std::string>& cells, RowWords& refused)
{
    const auto cell = [&](std::size_t column) {
        return column < cells.size() ? std::string_view(cells[column]) : std::string_view();
    };
    const auto refuse = [&](Error error) {
        refused.add({line, {}, std::move(error)});
        return std::nullopt;
    };
    const std::string_view low = cell(terms.columns.minimum), high = cell(terms.columns.maximum);
    if (isBlank(cell(terms.columns.day)) && isBlank(low) && isBlank(high)) return std::nullopt;
    const auto day = parseTypedDay(cell(terms.columns.day), terms.dayOrder);
    if (!day) return refuse(day.error());
    if (isBlank(low) || isBlank(high)) return std::nullopt;
    TemperatureRow row{line, *day, 0.0, 0.0};
    const bool isCelsius = terms.unit == HeatUnit::Celsius;
    const double coldest = isCelsius ? -95.0 : -139.0, hottest = isCelsius ? 65.0 : 149.0;
    for (const bool isLow : {true, false}) {
        const auto value = numberOf(isLow ? low : high, terms.decimalMark);
        if (!value) return refuse(value.error());
        if (*value < coldest || *value > hottest)
            return refuse({ErrorCode::OutOfRange,
                {isLow ? "minimum" : "maximum", isCelsius ? "-95" : "-139", isCelsius ? "65" : "149"}});
        (isLow ? row.minimum : row.maximum) = *value;
    }
    if (row.minimum > row.maximum)
        return refuse({ErrorCode::MinimumAboveMaximum,
            {std::string(withoutBlanks(low)), std::string(withoutBlanks(high))}});
    return row;
}

} // namespace duskrow::domain
