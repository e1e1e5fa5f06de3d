// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "domain/base/uuid.h"
#include "domain/bulletin/disclosure.h"
#include "domain/rules/season_week.h"
#include "domain/rules/trap_season.h"

namespace duskrow::domain {

// The days whose counts are for one reporting week: up to the grace after its count day, and from the grace
// after the count day before.
ReportingWeek countsOf(const ReportingWeek& week, const SeasonWeek& rhythm);

// What one trap has to say in one week. Counts after the week do not exist yet for it.
struct WeekReport {
    Uuid trap = {};
    Reporter reporter;
    Metres fix{0}; // how good the place is known
    bool isExpected = false; // the trap stood out in this week
    bool isCounted = false; // somebody counted it, if only as a minimum
    // Moths of seven nights by the counts of the week. Nothing where they do not cover it in full: the trap
    // failed now or before, the nights are not known, or one count stands for more than ten of them (common
    // practice, no source).
    std::optional<double> moths = {};
    Moths soFar = {};
    FlightPhase phase = FlightPhase::NotKnown;

    bool operator==(const WeekReport&) const = default;
};

// facts   later visits may be among them
// rules   as seasonRulesOf gives them, whatever day they look from
// farm    whose field the trap stands in
WeekReport weekReport(const TrapFacts& facts, const ReportingWeek& week, const SeasonWeek& rhythm,
    const SeasonRules& rules, const Uuid& farm, std::optional<std::size_t> district);

} // namespace duskrow::domain
