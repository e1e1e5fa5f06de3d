// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/units.h"

namespace duskrow::domain {

// A place as a direction from the middle of the earth, of length one: for many distances at once. A sphere is
// wrong by at most 0.56 % against WGS84, which courseBetween follows.
struct Direction {
    double x = 0.0;
    double y = 0.0;
    double z = 0.0;
};
Direction directionOf(GeoPoint place);

// The straight line through the earth, squared, for comparisons: it grows with the distance.
double chordSquared(const Direction& a, const Direction& b);
// The chord that spans a distance, in radii.
double chordOf(Metres distance);
Metres distanceOverChord(double chord);

} // namespace duskrow::domain
