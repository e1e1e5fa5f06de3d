// SPDX-License-Identifier: MIT
#include "domain/rules/sphere.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace duskrow::domain {

namespace {

constexpr double meanRadius = 6371008.8;

} // namespace

Direction directionOf(GeoPoint place)
{
    const double latitude = place.latitude() * std::numbers::pi / 180.0;
    const double longitude = place.longitude() * std::numbers::pi / 180.0;
    return {std::cos(latitude) * std::cos(longitude), std::cos(latitude) * std::sin(longitude),
        std::sin(latitude)};
}

double chordSquared(const Direction& a, const Direction& b)
{
    const double x = a.x - b.x;
    const double y = a.y - b.y;
    const double z = a.z - b.z;
    return x * x + y * y + z * z;
}

double chordOf(Metres distance)
{
    return 2.0 * std::sin(std::min(distance.value() / (2.0 * meanRadius), std::numbers::pi / 2.0));
}

Metres distanceOverChord(double chord)
{
    return Metres{2.0 * meanRadius * std::asin(std::min(1.0, chord / 2.0))};
}

} // namespace duskrow::domain
