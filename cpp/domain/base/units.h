// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "domain/base/quantity.h"

namespace duskrow::domain {

using Moths = Quantity<struct MothsTag, std::int64_t>;
using Bees = Quantity<struct BeesTag, std::int64_t>;
using Larvae = Quantity<struct LarvaeTag, std::int64_t>;
using Nights = Quantity<struct NightsTag, std::int64_t>;
using MothsPerNight = Quantity<struct MothsPerNightTag, double>;

using Millimetres = Quantity<struct MillimetresTag, std::int64_t>; // heights, size classes, fix accuracy
using Metres = Quantity<struct MetresTag, double>; // distances over ground
using Degrees = Quantity<struct DegreesTag, double>; // bearings, clockwise from true north
using Microlitres = Quantity<struct MicrolitresTag, std::int64_t>; // a part of a heavy catch by volume
using Milligrams = Quantity<struct MilligramsTag, std::int64_t>; // a part of a heavy catch by weight

constexpr Metres toMetres(Millimetres length)
{
    return Metres{static_cast<double>(length.value()) / 1000.0};
}

// A place on the WGS84 ellipsoid, in units of 1e-7 degree (about 11 mm of latitude).
struct GeoPoint {
    std::int32_t latE7 = 0;
    std::int32_t lonE7 = 0;

    [[nodiscard]] constexpr double latitude() const { return latE7 * 1e-7; }
    [[nodiscard]] constexpr double longitude() const { return lonE7 * 1e-7; }
    constexpr bool operator==(const GeoPoint&) const = default;
};

} // namespace duskrow::domain
