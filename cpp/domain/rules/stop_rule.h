// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>

#include "domain/base/result.h"
#include "domain/protocol/protocol.h"
#include "domain/rules/frame_tally.h"

namespace duskrow::domain {

// The largest threshold at a stop that a plan is made for, which keeps its exact table quick.
inline constexpr double mostLarvaeOfAPlan = 100.0;

// What a stop rule is asked for. The unit is a stop: one frame, or several laid at one place.
struct StopDesign {
    LarvaePerSquareMetre threshold;
    SquareMetres areaOfAStop = SquareMetres{0.25}; // frame area times frames at a stop
    double ratio = 1.5; // a field at threshold / ratio is to be called below
    double dispersion = 1.0; // k per stop that the lines are drawn for; infinity: strewn by chance alone
    double falseAbove = 0.1; // chance to call such a field above: an unneeded treatment
    double falseBelow = 0.1; // chance to call a field as far above the threshold below: a missed one
    int fewest = 5; // stops; nothing is decided before, so that the whole field is seen
    int expected = 10; // stops of a usual walk; the lines let fewer do only far from the threshold
    int most = 20; // stops; then the field is near the threshold and stays undecided
};

// The usual design for a threshold with the protocol's own frame, fewest and expected frames.
StopDesign stopDesignOf(const Protocol& protocol, LarvaePerSquareMetre threshold);

// Two parallel lines of the running total T after n stops: "below" at T <= slope n + below, "above" at
// T >= slope n + above.
struct StopLines {
    double slope = 0.0; // larvae a stop
    double below = 0.0; // larvae, negative
    double above = 0.0; // larvae, positive
    int firstBelow = 0; // the first stop after which any total, even zero, says "below"
};

// Lines between two means per stop, for one dispersion (infinity allowed).
//
// Errors  OutOfRange {"mean" | "dispersion" | "error", lowest, highest} unless 0 < low < high and the
//         errors lie from 0.05 to 0.4: below, twenty frames cannot reach the lines
// Source  sequential probability ratio test for the negative binomial (from memory: Wald 1947, Oakland 1950,
//         Waters 1955; re-derived)
Result<StopLines> stopLines(
    double lowMean, double highMean, double dispersion, double falseAbove, double falseBelow);

struct StopPlan {
    StopDesign design;
    double thresholdAtAStop = 0.0; // larvae
    double lowMean = 0.0; // larvae a stop: threshold / ratio
    double highMean = 0.0; // solved so that the slope is the threshold
    StopLines lines;
};

// The plan centred on the user's own threshold: the lines run along threshold times stops, so that the rule
// can be said in the field: stop when the total is so many larvae away from it.
//
// Errors  OutOfRange {"threshold_per_m2" | "frame_m2" | "ratio" | "dispersion" | "error" | "stops",
//         lowest, highest}: a threshold below 1 per square metre or above 100 larvae a stop, a ratio outside
//         1.1 to 4, a dispersion below 0.2, stops that do not ascend or exceed 200
// Source  own choice of a centred, truncated test; its true error rates are those of operatingTable
Result<StopPlan> planStops(const StopDesign& design);

// The largest total that says "below" after n stops, the smallest that says "above". Nothing before the
// fewest stops of the plan, or where even zero larvae do not say "below".
std::optional<Larvae> belowUpTo(const StopPlan& plan, std::int64_t stops);
std::optional<Larvae> aboveFrom(const StopPlan& plan, std::int64_t stops);

enum class StopState { GoOn, Below, Above, Undecided };

struct StopReport {
    StopState state = StopState::GoOn;
    bool isHeldByPatchiness = false; // the total says "below", but the counts are too patchy to trust it yet
};

// Where a walk stands by its total. Undecided: the most stops are made and the total lies between the lines.
//
// stops       0 or more; past the most of the plan the lines go on
// dispersion  k that the walk itself shows (FrameEstimate::dispersion). From the eighth stop on, below half
//             the plan's k an early "below" waits for more stops: patchy larvae are easily missed
StopReport stopAfter(
    const StopPlan& plan, std::int64_t stops, Larvae total, std::optional<double> dispersion = {});

} // namespace duskrow::domain
