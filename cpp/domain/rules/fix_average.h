// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <span>

#include "domain/base/time.h"
#include "domain/base/units.h"

namespace duskrow::domain {

// One position as the receiver gave it.
struct Fix {
    GeoPoint place;
    Metres
        accuracy; // radius that holds the true place with 68 % chance, as reported; not a number: not known
    Instant at;
};

struct FixAverage {
    double latitude = 0.0; // degrees, finer than a GeoPoint
    double longitude = 0.0; // degrees, from -180 to 180
    GeoPoint place;
    Metres accuracy; // what to keep: half the best single accuracy or the spread, whichever is larger
    Metres spread; // weighted root mean square distance of the fixes from their mean
    std::size_t used = 0;
    std::size_t leftOut = 0; // accuracy unknown, or over three times the best
    std::chrono::milliseconds duration{0}; // from the first used fix to the last
};

// The mean of the fixes, weighted by 1 / accuracy squared on the plane touching the place.
// A single fix keeps its own accuracy. Nothing when no fix knows its accuracy.
//
// Source  The formal error 1 / sqrt(sum of weights) is not used: fixes seconds apart err together, so it
//         promises too much (common practice, no source).
std::optional<FixAverage> averageFixes(std::span<const Fix> fixes);

// True when standing longer would hardly help: ten fixes or more over half a minute or more, good to 5 m
// (common practice, no source).
bool isSettled(const FixAverage& average);

} // namespace duskrow::domain
