// SPDX-License-Identifier: MIT
#include "domain/rules/geodesy.h"

#include <GeographicLib/Geodesic.hpp>
#include <cmath>

namespace duskrow::domain {

Course courseBetween(GeoPoint from, GeoPoint to)
{
    double distance = 0.0;
    double start = 0.0;
    double end = 0.0;
    GeographicLib::Geodesic::WGS84().Inverse(
        from.latitude(), from.longitude(), to.latitude(), to.longitude(), distance, start, end);
    Course course{Metres{distance}, std::nullopt};
    if (distance > 0.0) course.bearing = Degrees{start < 0.0 ? start + 360.0 : start};
    return course;
}

CompassPoint compassPoint(Degrees bearing)
{
    const double turned = std::fmod(std::fmod(bearing.value(), 360.0) + 360.0, 360.0);
    return static_cast<CompassPoint>(static_cast<int>(std::floor(turned / 45.0 + 0.5)) % 8);
}

} // namespace duskrow::domain
