// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/base/units.h"

namespace duskrow::domain {

struct Course {
    Metres distance;
    std::optional<Degrees> bearing; // at the start, 0 up to 360; nothing when both places are the same
};

// The shortest way over the WGS84 ellipsoid, by GeographicLib.
Course courseBetween(GeoPoint from, GeoPoint to);

enum class CompassPoint { North, NorthEast, East, SouthEast, South, SouthWest, West, NorthWest };

// The nearest of the eight points; halfway belongs to the next one clockwise.
CompassPoint compassPoint(Degrees bearing);

} // namespace duskrow::domain
