// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <vector>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "domain/rules/reporting_week.h"

namespace duskrow::domain {

// What a trap caught from the day it was last emptied (or set up) to the day it was counted.
// Night n belongs to the day on which it begins: the nights of `from` up to the one before `to`.
struct CatchInterval {
    LocalDay from;
    LocalDay to;
    Moths caught;
};

struct WeekShare {
    ReportingWeek week;
    Nights nights; // of the interval within this week
    double moths = 0.0;
    bool isDerived = false; // true when the catch was spread over several weeks: nobody counted this share
};

// The catch spread over the reporting weeks by their nights, every week of the interval in order.
// The shares add up to the catch exactly, in whatever order they are added.
// An interval without a night is one share, in the week of `to`.
std::vector<WeekShare> spreadOverWeeks(const CatchInterval& interval, std::chrono::weekday weekStart);

} // namespace duskrow::domain
