// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "domain/rules/trap_season.h"

namespace duskrow::domain {

struct CatchPoint {
    LocalDay day = {};
    Moths soFar = {};
};

// A season that is over: from set-up with nothing caught to its last count, days ascending.
struct PastTrapSeason {
    std::vector<CatchPoint> points = {};
};

// Where a season may end, by how the flights of other years went.
struct SeasonOutlook {
    double fractionLow = 0.0; // of the flight that is over by the day asked: 10 and 90 % of the past seasons
    double fractionHigh = 0.0; //   lie below these
    std::optional<Moths> totalLow = {}; // nothing while fewer than ten moths were caught, or the flight has
    std::optional<Moths> totalHigh = {}; //   hardly begun: then nobody can say
    std::size_t seasons = 0; // past trap seasons it rests on
    std::size_t years = 0; // of that many years: a few years show little of how dates differ
};

// A trap's season as one to learn from. Nothing unless it was whole, without a failure and without an open
// question.
std::optional<PastTrapSeason> pastSeasonOf(const Trap& trap, const TrapSeason& season);

// The part of a past season's catch that was in by the same day of the year; between two counts in a
// straight line. Nothing when its total is below ten moths.
std::optional<double> fractionCaughtBy(const PastTrapSeason& past, std::chrono::month_day day);

// A simple range for the season of one trap: what it has so far, divided by the part of the flight that was
// over on the same day of the year in past seasons. It knows nothing of this year's weather; a fuller method
// follows the flight curve.
//
// soFar  the trap's catch up to `day`
// day    of the trap's last count, not today: what came later is in no count yet
// past   of any trap of the store, in any order; at least five of ten moths or more, otherwise nothing
// Source  10 to 90 % of the past seasons, five seasons, ten moths, 2 % of the flight: common practice,
//         no source
std::optional<SeasonOutlook> seasonOutlook(Moths soFar, LocalDay day, std::span<const PastTrapSeason> past);

} // namespace duskrow::domain
