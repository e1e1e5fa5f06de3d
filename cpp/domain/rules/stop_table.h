// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "domain/rules/stop_rule.h"

namespace duskrow::domain {

// How a plan fares in fields of one density: shares of all walks, which add up to 1.
struct OperatingRow {
    LarvaePerSquareMetre density;
    double below = 0.0;
    double undecidedBelow = 0.0; // the most stops made, mean below the threshold
    double undecidedAbove = 0.0; // the same, mean at or above it
    double above = 0.0;
    double meanStops = 0.0;
    int stopsOfNineInTen = 0; // nine walks in ten are over by then

    [[nodiscard]] double undecided() const { return undecidedBelow + undecidedAbove; }
};

// The exact table of a plan: every way a walk can go, stop by stop, without simulation. A walk ends where a
// line is met first. The wait for patchy counts (stopAfter) is left out: in simulated fields as patchy as the
// plan it changes no share by more than 0.002, in fields twice as patchy it turns one call of "below" in a
// hundred walks into another end.
//
// densities   of the field, each from 0 to 100,000 larvae per square metre
// dispersion  k of the field, 0.2 or more, infinity allowed; the plan's own or another, to see what happens
//             in fields patchier than it was drawn for
// Errors      OutOfRange {"density_per_m2" | "dispersion", lowest, highest}
// Source      recursion over the distribution of the running total of walks not over yet; derived, checked
//             against an own computation with numpy and against 4,000 simulated fields
Result<std::vector<OperatingRow>> operatingTable(
    const StopPlan& plan, std::span<const LarvaePerSquareMetre> densities, double dispersion);

} // namespace duskrow::domain
