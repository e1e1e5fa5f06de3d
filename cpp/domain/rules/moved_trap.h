// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/units.h"

namespace duskrow::domain {

// The distance that two fixes of one spot exceed with a chance.
//
// one, other  accuracies of the fixes: the radius that holds 68 % of them
// chance      above 0, below 1
// Source      Rayleigh's distribution: s sqrt(-2 ln chance) with s^2 = (one^2 + other^2) / (-2 ln 0.32)
Metres distanceByAccuracy(Metres one, Metres other, double chance);

// The furthest two fixes of one spot may lie apart before anybody is asked: what one pair in a thousand
// exceeds, and 50 m at least (own choice, no source).
Metres explainedDistance(Metres one, Metres other);

} // namespace duskrow::domain
