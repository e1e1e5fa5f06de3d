// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "domain/base/time.h"
#include "domain/protocol/protocol.h"
#include "domain/rules/catch_intervals.h"

// What the rules of a protocol come to for the counts of one trap. `steps` are always those of its season, in
// the order of their days; nights that were lost uncounted break what has to follow on each other.
namespace duskrow::domain {

// The rules that hold for a type of trap, in the order of the file. They live as long as `protocol`.
std::vector<const TrapRule*> trapRulesFor(const Protocol& protocol, std::string_view trapType);

// value  0 or more
// steps  as a protocol file has them: at least one, the first from 0
const RuleStep& stepOf(std::span<const RuleStep> steps, double value);

struct CatchSpan {
    LocalDay from = {};
    LocalDay to = {};
    Moths moths = {};

    [[nodiscard]] Nights nights() const { return nightsBetween(from, to); }
    bool operator==(const CatchSpan&) const = default;
};

enum class WindowState {
    NotReached,
    CannotTell, // counts cover too many nights: it may have been reached
    ReachedWithin, // somewhere in this count, for so many moths cannot be spread thinly enough
    Reached,
};

struct WindowResult {
    WindowState state = WindowState::NotReached;
    std::optional<CatchSpan> span = {}; // the first; none when it was not reached
};

// Whether so many moths were caught within so many nights that follow on each other.
//
// moths, nights  1 or more
WindowResult mothsInNights(std::span<const CatchStep> steps, Moths moths, Nights nights);

struct RateResult {
    CatchSpan span; // at least `per` nights, as few as the counts allow; fewer when no more were counted
    double catchPer = 0; // moths of `per` nights, as a mean of the span
};

struct Rates {
    std::optional<RateResult> last = {}; // nothing without a count over a night that worked
    std::optional<RateResult> highest = {};
};

// What was caught in `per` nights: of the last counts, and the highest of the season. Counts that are only
// a minimum are left out.
//
// per  1 or more
Rates catchRates(std::span<const CatchStep> steps, Nights per);

struct RunResult {
    int atEnd = 0; // visits in a row up to the last one
    std::optional<CatchSpan> reached = {}; // the first run that is long enough
    bool isOverMoreNights = false; // a visit of that run, or else of the last one, covers more than `apart`
};

// Visits in a row, each with so many moths or more.
//
// visits  1 or more
RunResult visitsInARow(
    std::span<const CatchStep> steps, Moths moths, int visits, std::optional<Nights> apart);

struct SumUpTo {
    Moths least = {}; // counted on that day or before
    Moths most = {}; // with the count that runs over that day
};

SumUpTo sumUpTo(std::span<const CatchStep> steps, LocalDay day);

// How far warmth has come since a day. Null where nothing is reached, or nothing is left.
struct HeatReached {
    const HeatStep* last = nullptr;
    const HeatStep* next = nullptr;
    DegreeDays toNext = {};
};

// sum  of the degree-days since that day
HeatReached heatReached(std::span<const HeatStep> steps, DegreeDays sum);

} // namespace duskrow::domain
