// SPDX-License-Identifier: MIT
#include "domain/rules/local_plane.h"

#include <cmath>
#include <numbers>

namespace duskrow::domain {

namespace {

// WGS84 (NGA.STND.0036): its two defining figures.
constexpr double equatorialRadius = 6378137.0;
constexpr double flattening = 1.0 / 298.257223563;
constexpr double eccentricitySquared = flattening * (2.0 - flattening);

constexpr double radians(double degrees)
{
    return degrees * std::numbers::pi / 180.0;
}

} // namespace

EarthRadii earthRadii(double latitude)
{
    const double sine = std::sin(radians(latitude));
    const double w = 1.0 - eccentricitySquared * sine * sine;
    const double across = equatorialRadius / std::sqrt(w);
    return {Metres{across * (1.0 - eccentricitySquared) / w}, Metres{across}};
}

PlaneOffset offsetFrom(GeoPoint origin, double latitude, double longitude)
{
    const EarthRadii radii = earthRadii(origin.latitude());
    const double eastward = radii.eastward.value() * std::cos(radians(origin.latitude()));
    return {eastward * radians(longitudeDifference(origin.longitude(), longitude)),
        radii.northward.value() * radians(latitude - origin.latitude())};
}

double longitudeDifference(double from, double to)
{
    return std::remainder(to - from, 360.0);
}

GeoPoint toGeoPoint(double latitude, double longitude)
{
    return {static_cast<std::int32_t>(std::lround(latitude * 1e7)),
        static_cast<std::int32_t>(std::lround(std::remainder(longitude, 360.0) * 1e7))};
}

} // namespace duskrow::domain
