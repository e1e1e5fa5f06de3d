// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "domain/rules/control_timing.h"
#include "domain/rules/threshold_table.h"

namespace duskrow::domain {

enum class FramesVerdict { Below, Above, TooCloseToCall, NotEnoughFrames };

// What a scouting walk came to, held against the same threshold as here.
//
// moreFrames  how many more would probably settle it; nothing when no more are asked for
struct FramesFinding {
    FramesVerdict verdict = FramesVerdict::NotEnoughFrames;
    Frames frames = {};
    std::optional<LarvaePerSquareMetre> mean = {};
    std::optional<LarvaePerSquareMetre> low = {}; // ends of the range
    std::optional<LarvaePerSquareMetre> high = {};
    std::optional<double> probabilityAbove = {}; // that the field's mean is over the threshold, 0 to 1
    std::optional<Frames> moreFrames = {};
};

// Of the larvae alone. Whether to act also needs the time: NextStep.
enum class ControlVerdict { Below, Above, TooCloseToCall };

enum class NextStep {
    LeaveAlone, // below
    SearchMoreFrames,
    LookAgain, // too early, or too close to call with all frames searched
    SayTiming, // above, but crop stage and the rest have not been said
    ControlPays, // above and in time; the decision stays the person's own
    TooLate,
};

enum class DecisionReason {
    MeanBelow, // {mean, threshold} larvae per square metre, as all below
    MeanAbove, // {mean, threshold}
    RangeHoldsThreshold, // {low, high, threshold}
    FewFrames, // {frames searched}
    ProbabilityAbove, // {percent}
    DrySeason, // {divisor}
    AtFloor, // {threshold}
    OutsidePublished, // {} see the notes of the threshold
    TimingEarly, // {} see the findings of the timing
    TimingFits,
    TimingLate,
    TimingNotKnown,
};

struct DecisionFinding {
    DecisionReason reason;
    std::vector<double> numbers = {};
};

enum class ChangeWhat {
    MoreFrames, // {frames}
    PriceAbove, // {price in the user's unit} control would pay
    PriceBelow, // {price} it would not
    CostAbove, // {cost in the user's unit} it would not
    CostBelow, // {cost} it would pay
    DrySeasonChosen, // {published divisor, threshold with it} it would pay
    DrySeasonDropped, // {threshold without it} it would not
    LookingAgain, // on `day`
};

// What would give another verdict, everything else as it is.
struct DecisionChange {
    ChangeWhat what;
    std::vector<double> numbers = {};
    std::optional<LocalDay> day = {};
};

struct ControlDecision {
    ControlVerdict verdict = ControlVerdict::TooCloseToCall;
    NextStep next = NextStep::SearchMoreFrames;
    std::vector<DecisionFinding> reasons; // the strongest first
    std::vector<DecisionChange> changes;
};

// Larvae, money and time put together. Guidance: it never says that a field must be sprayed.
//
// A price or cost that would change the verdict is the one at which the threshold meets the mean; when it is
// too close to call, at which it leaves the range. Amounts no one would type are left out, and so is what a
// floor rules out.
ControlDecision controlDecision(const ThresholdRule& rule, const Threshold& threshold,
    const FramesFinding& frames, const ControlTiming& timing);

} // namespace duskrow::domain
