// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "domain/base/time.h"

namespace duskrow::domain {

// What comes first in days that are written with numbers and the year behind: 14/07/2026 or 07/14/2026.
enum class DayOrder { DayFirst, MonthFirst };

// A day as tables hold it: 2026-07-14, 2026/7/14, 20260714, 14.7.2026, 07/14/2026, 14 Jul 2026, July 14,
// 2026, 14 juillet 2026; blanks around it and a midnight behind it aside. Days that are the same in both
// orders (5/5/2026) need none. 14 Jul, 14-Jul and July 14 are of the year of the table.
//
// order   of numbers with the year behind; nothing when it is not known
// year    of the row or the table; a year of two digits is read only when it ends this one
// Errors  NotADay, DayOrderUnsaid, YearOfTwoDigits {what was typed}; YearUnsaid {}
Result<LocalDay> parseTypedDay(
    std::string_view typed, std::optional<DayOrder> order, std::optional<int> year = {});

enum class DayOrderReason {
    NotNeeded, // every day says its order itself
    Shown, // `example` can be read in one order only
    Both, // `example` and `other` can be read in different orders only
    Ambiguous, // `example` and all others can be read in both
    Chosen,
};

struct DayOrderFinding {
    std::optional<DayOrder> order; // nothing for Both and Ambiguous: it must be said
    DayOrderReason reason = DayOrderReason::NotNeeded;
    std::string example = {};
    std::string other = {};
};

// Learns the order of a table's days from all of them.
class DayOrderSurvey {
public:
    void take(std::string_view typed);
    [[nodiscard]] DayOrderFinding finding() const;

private:
    std::string m_dayFirst; // a day that can be read so only
    std::string m_monthFirst;
    std::string m_either;
};

} // namespace duskrow::domain
