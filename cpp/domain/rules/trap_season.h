// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "domain/rules/catch_intervals.h"
#include "domain/rules/flight_phase.h"
#include "domain/rules/reporting_week.h"
#include "domain/rules/trap_facts.h"

namespace duskrow::domain {

// What a whole season asks of a trap. A day nobody has published is absent; then no season is called whole.
struct SeasonRules {
    std::optional<LocalDay> latestSetUp = {}; // set up later, it may have missed the first moths
    std::optional<LocalDay> earliestTakeDown = {}; // counted up to here at least
    std::optional<LocalDay> lastDay = {}; // a trap still out afterwards has its season behind it
    std::chrono::weekday weekStart = std::chrono::Sunday;
    LocalDay today = {};
};

enum class SeasonStanding {
    SoFar, // the flight goes on: say "so far", no band
    Whole, // bands apply
    PartOfFlight, // the trap was out or counted for part of the flight: a minimum, no band
    NotKnown, // no set-up day, or the protocol has no season: no band
};

// Why a season is only part of the flight; several may hold.
struct PartReasons {
    bool cameLate = false;
    bool endedEarly = false;
    bool notCountedToEnd = false; // nobody counted it up to the end

    [[nodiscard]] bool any() const { return cameLate || endedEarly || notCountedToEnd; }
};

struct WeekCatch {
    ReportingWeek week;
    std::optional<double> moths = {}; // nothing where no night was counted: that is not zero
    Nights nights = {}; // counted nights of this week
    std::optional<MothsPerNight> rate = {}; // of the nights on which the trap worked
    bool isDerived = false; // a count was spread over several weeks: nobody counted this figure
    bool isAtLeast = false;
    bool isProvisional = false;
};

struct TrapSeason {
    Uuid trap = {};
    std::vector<VisitCatch> visits = {};
    std::vector<CaughtInterval> intervals = {};
    std::vector<CatchStep> steps = {};
    std::vector<WeekCatch> weeks = {}; // without a gap from the first to the last
    std::vector<OpenQuestion> questions = {};
    std::vector<LocalDay> moves = {}; // days on which the trap was moved within its season
    Moths total = {}; // so far
    std::optional<MothRange> range = {}; // when a heavy catch was estimated
    Moths waiting = {}; // not in the total: moths that nobody has named yet
    bool isAtLeast = false; // the trap failed, or was lost with its catch
    bool isProvisional = false;
    bool isCorrected = false; // named samples were added
    SeasonStanding standing = SeasonStanding::NotKnown;
    PartReasons part;
    std::optional<LocalDay> countedUntil = {};
    Flight flight;

    // Bands are for whole seasons. With isAtLeast as well, the band is the lowest that it can be.
    [[nodiscard]] bool takesBand() const { return standing == SeasonStanding::Whole; }
    [[nodiscard]] bool isMinimum() const { return isAtLeast || part.any(); }
};

// The season of one trap up to its last visit.
TrapSeason trapSeason(const TrapFacts& facts, const SeasonRules& rules);

struct TrapTotal {
    Uuid trap = {};
    Moths total = {};
    bool isMinimum = false;
    bool isProvisional = false;
    SeasonStanding standing = SeasonStanding::NotKnown;
};

struct SeasonOfTrap {
    const Trap& trap;
    const TrapSeason& season;
};

// Two traps set up as a pair, in the order given: both totals and never their sum. Nothing when neither says
// that it is paired with the other.
std::optional<std::array<TrapTotal, 2>> pairView(const SeasonOfTrap& one, const SeasonOfTrap& other);

} // namespace duskrow::domain
