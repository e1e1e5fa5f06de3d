// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/base/heat_method.h"
#include "domain/import/count_row.h"

namespace duskrow::domain {

// A day of a table of temperatures, in the degrees of the table.
struct TemperatureRow {
    std::size_t line = 0; // of the file
    LocalDay day = {};
    double minimum = 0.0;
    double maximum = 0.0;
};

enum class ScaleReason {
    Heading, // `example` is a heading that says it
    Values, // `example` is warmer than any day in degrees Celsius
    Unsaid, // nothing shows it
    Chosen,
};

struct ScaleFinding {
    std::optional<HeatUnit> unit; // nothing for Unsaid
    ScaleReason reason = ScaleReason::Unsaid;
    std::string example = {};
};

// Which columns of a table hold what, from 0.
struct TemperatureColumns {
    std::size_t day = 0;
    std::size_t minimum = 0;
    std::size_t maximum = 0;
};

// By headings, English or French, with a unit behind or in brackets: date, tmin, tmax and their like.
//
// chosen  "Air low=minimum": heading or number (from 1) of a column and what it holds
// Errors  ColumnMissing {code}; ColumnTwice {code}; UnknownCode {"column", code, those there are}
Result<TemperatureColumns> temperatureColumns(
    const std::vector<std::string>& header, const std::vector<ColumnChoice>& chosen);

// The scale that a heading says: "Tmax (°F)", "min_temp_c".
std::optional<HeatUnit> scaleSaid(const std::string& heading);

// Warmer than this no day on earth was in degrees Celsius (56.7; from memory).
inline constexpr double warmestCelsius = 57.0;

// Learns from every row how days and numbers are written and of which scale they are.
class TemperatureSurvey {
public:
    TemperatureSurvey(const std::vector<std::string>& header, const TemperatureColumns& columns);
    void take(const std::vector<std::string>& cells);

    [[nodiscard]] DayOrderFinding dayOrder() const { return m_days.finding(); }
    [[nodiscard]] DecimalFinding decimalMark() const;
    [[nodiscard]] ScaleFinding scale() const;

private:
    void takeNumber(const std::string& cell);

    TemperatureColumns m_columns;
    ScaleFinding m_scale;
    DayOrderSurvey m_days;
    std::string m_point, m_comma;
    double m_warmest = -1000.0;
};

struct TemperatureTerms {
    TemperatureColumns columns;
    std::optional<DayOrder> dayOrder;
    std::optional<DecimalMark> decimalMark;
    HeatUnit unit = HeatUnit::Celsius;
};

// One row. Nothing for a day without both temperatures (blank, NA, M, -): it was not measured, which is no
// mistake and no zero.
//
// Errors  in `refused`: those of parseTypedDay; NotANumber; OutOfRange {"minimum" or "maximum", ...};
//         MinimumAboveMaximum {minimum, maximum}
std::optional<TemperatureRow> readTemperatureRow(const TemperatureTerms& terms, std::size_t line,
    const std::vector<std::string>& cells, RowWords& refused);

} // namespace duskrow::domain
