// SPDX-License-Identifier: MIT
#include "domain/rules/moved_trap.h"

#include <algorithm>
#include <cmath>

namespace duskrow::domain {

namespace {

constexpr double outsideTheRadius = 0.32;
constexpr double chanceAsked = 0.001;
constexpr Metres leastAsked{50.0};

} // namespace

Metres distanceByAccuracy(Metres one, Metres other, double chance)
{
    const double radius = std::hypot(one.value(), other.value());
    return Metres{radius * std::sqrt(std::log(chance) / std::log(outsideTheRadius))};
}

Metres explainedDistance(Metres one, Metres other)
{
    return std::max(leastAsked, distanceByAccuracy(one, other, chanceAsked));
}

} // namespace duskrow::domain
