// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/units.h"

namespace duskrow::domain {

// Radii of curvature of the WGS84 ellipsoid at a latitude.
struct EarthRadii {
    Metres northward; // along the meridian
    Metres eastward; // across it
};
EarthRadii earthRadii(double latitude);

struct PlaneOffset {
    double eastMetres = 0.0;
    double northMetres = 0.0;
};

// How far a place lies east and north of the origin on the plane touching it: field scale only (below 20 km).
// The shorter way round is taken, so that the antimeridian is a line like any other.
PlaneOffset offsetFrom(GeoPoint origin, double latitude, double longitude);

// The difference of two longitudes in degrees, from -180 to 180.
double longitudeDifference(double from, double to);

// A place in degrees as a GeoPoint; the longitude may lie beyond 180 degrees and is brought back.
GeoPoint toGeoPoint(double latitude, double longitude);

} // namespace duskrow::domain
