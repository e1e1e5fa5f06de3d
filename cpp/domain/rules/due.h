// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "domain/records/trap.h"
#include "domain/rules/season_week.h"
#include "domain/rules/stake.h"
#include "domain/rules/trap_facts.h"

namespace duskrow::domain {

enum class DueWhat {
    SetUpUnfinished,
    Count,
    LureChange,
    StripChange,
    RaiseStake,
    TakeDown, // with a last count
    TakeDownUnfinished,
    ScoutingWindow,
};

// Why something is due, with its numbers. Days and nights run to the day it is due, or to today when that is
// later.
enum class DueReason {
    SetUpStepsOpen, // {one SetUpStep after the other}
    WeeklyCount, // {count days gone by before, nights since last emptied or set up; the latter only if known}
    LureGone, // {days since it was found gone}
    LureOld, // {days it has been out, days it lasts}
    LureExpired, // {days past the date on its packet}
    StripGone, // {days since it was found gone}
    StripOld, // {days it has been in, days it lasts}
    MothsAlive, // {days since living moths were found in the bucket}
    CropAtEntrance, // {entrance mm, canopy mm, where to set it mm; the last only if the stake allows better}
    CropWillReach, // {entrance mm, canopy mm at the last visit, days until it reaches (below 0: it has),
                   // where to set it mm; the last only if the stake allows better}
    SeasonOver, // {days since traps come down}
    TakeDownStepsOpen, // {one TakeDownStep after the other}
    PastPeak, // {moths of the highest catch, its nights, days from the peak to the window}
};

enum class SetUpStep { Day, Place, Lure, Strip, Entrance };
enum class TakeDownStep { LureOut, StripOut, Washed };

struct DueItem {
    DueWhat what;
    DueReason why;
    LocalDay day = {}; // may lie ahead: whoever shows it says how far ahead to look
    std::optional<LocalDay> until = {}; // of a window of days
    bool isOverdue = false;
    std::vector<std::int64_t> numbers = {}; // in the order said at the reason
};

// What a protocol and a programme say of the work at a trap. What nobody has published is absent, and then
// nothing is due for it.
struct DueRules {
    SeasonWeek week = {};
    std::chrono::days visitInterval{7};
    std::optional<std::chrono::days> lureLife = {};
    bool hasStrip = false; // the trap type takes a killing strip
    std::optional<std::chrono::days> stripLife = {};
    HeightRule heightRule = HeightRule::FollowCanopy; // where the trap does not say its own
    Millimetres leastClearance = {}; // of the entrance over the canopy
    StakeRange stake = {};
    std::optional<LocalDay> takeDownFrom = {};
    std::optional<LocalDay> takeDownTo = {};
    std::optional<std::chrono::days> scoutingAfterPeak = {};
    std::chrono::days scoutingLasts{14}; // common practice, no source
};

// Everything due at one trap, soonest first; each kind at most once. Records of days after `today` are not
// looked at, so that a past day can be asked for as well.
//
// A visit answers its count day whether it could be counted or not, from the days of grace before that day
// on; until then the count stays due on the first count day that nobody answered.
std::vector<DueItem> dueOf(const TrapFacts& facts, const DueRules& rules, LocalDay today);

// The count that comes after one on this day, by the count days and the protocol's interval.
LocalDay countAfter(LocalDay visited, const DueRules& rules);

// The day on which traps come down: the count day within the protocol's days, or their last. Nothing without
// such days.
std::optional<LocalDay> takeDownDay(const DueRules& rules);

} // namespace duskrow::domain
