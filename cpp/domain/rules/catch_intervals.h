// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "domain/base/uuid.h"
#include "domain/rules/heavy_catch.h"
#include "domain/rules/trap_facts.h"

namespace duskrow::domain {

// One visit with its count set right. A count is the total since the trap was last emptied or set up.
struct VisitCatch {
    Uuid visit = {};
    LocalDay day = {};
    std::optional<Moths> count = {}; // with the named moths; nothing when it could not be counted
    std::optional<Moths> asCounted = {}; // as it stands in the record
    std::optional<MothRange> range = {}; // of a heavy catch, with the named moths
    Moths named = {}; // moths of its samples that were found to be the pest
    Moths waiting = {}; // moths nobody was sure of and nobody has named yet
    std::optional<LocalDay> since = {}; // last emptied or set up; nothing when set-up has no day
    std::optional<Nights> nights =
        {}; // since then; nothing when unknown or when the visit lies before set-up
    std::optional<MothsPerNight> rate = {}; // nothing without a count or a night, or when the trap failed
    Moths soFar = {}; // of the season, this visit included
    bool isAtLeast = false; // the trap failed since it was last emptied

    [[nodiscard]] bool isCorrected() const { return named.value() > 0; }
};

// From one emptying (or set-up) to the next, or to the last visit when the bucket has not been emptied since.
struct CaughtInterval {
    std::optional<LocalDay> from = {};
    LocalDay to = {};
    std::optional<Moths> caught = {}; // nothing when none of it was ever counted
    std::optional<MothRange> range = {};
    std::optional<Nights> nights = {};
    std::optional<MothsPerNight> rate = {}; // nothing when the trap failed: the rate leaves the interval out
    bool isAtLeast = false; // the trap failed, or the catch was thrown out uncounted
    bool isProvisional = false; // a question is open, the higher value is taken
    bool isOpen = false; // what was counted is still in the bucket
};

// What one count added to the count before it; the same as the interval when each visit emptied the trap.
struct CatchStep {
    std::optional<LocalDay> from = {};
    LocalDay to = {};
    std::optional<Moths> caught = {}; // nothing when these nights were lost uncounted
    bool isAtLeast = false;
    bool isProvisional = false;
};

enum class CatchQuestion {
    EmptiedUnknown, // did this visit empty the trap? A later count depends on it
    CountFell, // fewer moths than at the visit before, though that one did not empty the trap
};

struct OpenQuestion {
    Uuid visit = {};
    CatchQuestion question = CatchQuestion::EmptiedUnknown;

    bool operator==(const OpenQuestion&) const = default;
};

struct CatchIntervals {
    std::vector<VisitCatch> visits = {};
    std::vector<CaughtInterval> intervals = {}; // in the order of days, never overlapping
    std::vector<CatchStep> steps = {}; // the same nights, as finely as they were counted
    std::vector<OpenQuestion> questions = {};
    Moths total = {};
    std::optional<MothRange> range = {}; // sums of low and of high ends, when a heavy catch is among them
    std::optional<LocalDay> countedUntil = {}; // last day of a count or an emptying
};

// Whether the trap was found to have failed: the moths of these nights are a minimum.
bool hasFailed(const Visit& visit);

// The catch of one trap from its visits.
//
// A count of a trap that was not emptied is contained in the next one and never added to it. Where nobody
// knows whether a visit emptied the trap, the two counts are not added either: the higher stands, as a
// question. An uncounted visit that emptied the trap loses the moths since the emptying before it; one that
// did not lets the interval go on. A count that is left out of the picture is such an uncounted visit; where
// the trap did not stand on its day, or another visit of that day counts, nothing of it is left.
CatchIntervals catchIntervals(const TrapFacts& facts);

} // namespace duskrow::domain
