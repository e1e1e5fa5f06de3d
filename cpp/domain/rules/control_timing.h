// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "domain/base/result.h"
#include "domain/base/time.h"
#include "domain/protocol/pest_rules.h"
#include "domain/protocol/scouting.h"

namespace duskrow::domain {

// Of the larvae looked at, how many have reached the size to control.
struct LarvaeBySize {
    std::int64_t looked = 0;
    std::int64_t largeEnough = 0;
};

// What a person saw and knows. What was not looked at has no value and is no reason for or against.
struct ControlFacts {
    LocalDay today = {}; // handed in
    std::optional<BbchStage> stage = {};
    std::optional<LarvaeBySize> larvae = {};
    std::optional<Percent> podsDamaged = {}; // 0 is "looked, and saw none"
    std::optional<std::chrono::days> labelInterval = {}; // days before harvest on the product's label
    std::optional<LocalDay> cuttingDay = {}; // swathing or straight cutting, whichever is planned
};

enum class Timing { TooEarly, InWindow, TooLate, NotKnown };

enum class TimingReason {
    // too early
    StageBefore, // {stage, first stage of the window}
    LarvaeSmall, // {percent large enough, percent asked for, size in mm}
    NoPodDamage, // {}
    // too late
    StagePast, // {stage, last stage of the window}
    PodsPastLimit, // {percent damaged, percent to decide before}
    IntervalTooShort, // {days until cutting, days on the label}
    // in the window
    StageInWindow, // {stage, first, last}
    LarvaeLarge, // {percent large enough, percent asked for, size in mm}
    PodDamageBegun, // {percent damaged, percent to decide before}
    IntervalAllows, // {days left for spraying, today included; days on the label}
    // open: asked for, not said
    StageNotSaid, // {}
    LarvaeNotSized, // {}
    PodsNotLookedAt, // {}
    IntervalNotSaid, // {} the label's days, the cutting day, or both
};

// Which way one reason points.
enum class TimingSide { Early, Late, Within, Open };
TimingSide sideOf(TimingReason reason);

struct TimingFinding {
    TimingReason reason;
    std::vector<double> numbers = {}; // in the order said at the reason
};

// Late outweighs early, for what is too late stays so; either outweighs what fits. Without a stage, and with
// no reason either way, the timing is not known.
//
// lastDay    to spray by the label: the cutting day less the interval; it may lie in the past
// lookAgain  a suggestion: after the protocol's days, but on the last day to spray if that comes first;
// nothing
//            when it is too late, today is that last day, or the protocol names no days
struct ControlTiming {
    Timing timing = Timing::NotKnown;
    std::vector<TimingFinding> findings; // too late first, then too early, within, open
    std::optional<LocalDay> lastDay = {};
    std::optional<LocalDay> lookAgain = {};
};

// When control would make sense in one field, the threshold aside. What a protocol is silent on is not asked.
//
// scouting  of the same protocol, for the smallest larva to control; null when it has none
// Errors    OutOfRange for a stage outside 0 to 99, a share of pods outside 0 to 100, larvae counted
// backwards,
//           an interval outside 0 to 365 days
// Source    window and limits: the protocol's "control", with its sources. The interval counts to cutting, so
//           21 days mean 21 days before swathing: Canola Council of Canada, Canola Watch, 8 August 2013.
Result<ControlTiming> controlTiming(
    const ThresholdRule& rule, const ScoutingAdvice* scouting, const ControlFacts& facts);

// Larvae counted by the protocol's size classes. A class that begins below the size to control does not count
// as large enough.
//
// counts  one for each size class, in the protocol's order
// Errors  OutOfRange {"larvae", ...} when a count is missing, too many or negative
Result<LarvaeBySize> larvaeBySize(const ScoutingAdvice& scouting, std::span<const std::int64_t> counts);

} // namespace duskrow::domain
