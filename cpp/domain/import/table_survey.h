// SPDX-License-Identifier: MIT
#pragma once

#include "domain/import/column_map.h"
#include "domain/rules/typed_day.h"

namespace duskrow::domain {

enum class DecimalMark { Point, Comma };

enum class DecimalReason {
    NotNeeded, // no number has one
    Shown, // `example` has it, and no other number has the other mark
    Both, // `example` has a point and `other` a comma
    Chosen,
};

struct DecimalFinding {
    std::optional<DecimalMark> mark; // nothing for Both and NotNeeded
    DecimalReason reason = DecimalReason::NotNeeded;
    std::string example = {};
    std::string other = {};
};

// Learns from every row of a table how its days and numbers are written. A number with three digits behind
// the mark shows nothing: it may be thousands.
class TableSurvey {
public:
    explicit TableSurvey(const ColumnMap& map) : m_map(map) { }
    void take(const std::vector<std::string>& cells);
    void takeDay(std::string_view typed) { m_days.take(typed); } // that stands in a heading

    [[nodiscard]] DayOrderFinding dayOrder() const { return m_days.finding(); }
    [[nodiscard]] DecimalFinding decimalMark() const;

private:
    void takeNumber(std::string_view cell);

    const ColumnMap& m_map;
    DayOrderSurvey m_days;
    std::string m_point; // the first number with one
    std::string m_comma;
};

} // namespace duskrow::domain
