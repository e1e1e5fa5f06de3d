// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <optional>
#include <span>
#include <vector>

#include "domain/base/time.h"
#include "domain/base/uuid.h"
#include "domain/rules/due.h"

namespace duskrow::domain {

// A trap with the rules of its pest and trap type. It only looks on.
struct TrapToPlan {
    TrapFacts facts;
    const DueRules& rules;
};

// One thing to do on a day, or within days, at one trap or at several: Count, LureChange, StripChange,
// TakeDown or ScoutingWindow.
struct CalendarEntry {
    DueWhat what = DueWhat::Count;
    DueReason why = DueReason::WeeklyCount;
    LocalDay first = {};
    LocalDay last = {}; // included
    std::vector<Uuid> traps = {}; // in the order given
    std::optional<std::chrono::minutes> alarm = {}; // from local midnight of `first`
};

// What is still to come of a season, from `today` on, in the order of days: one entry for each thing and day,
// whatever the number of traps. Counts are the only ones to ring: one alarm, at six in the evening of the
// count day (common practice, no source). What is overdue belongs on the list of today, not in a calendar.
std::vector<CalendarEntry> calendarOfSeason(std::span<const TrapToPlan> traps, LocalDay today);

} // namespace duskrow::domain
