// SPDX-License-Identifier: MIT
#include "domain/rules/region_grid.h"

#include <algorithm>
#include <cmath>

namespace duskrow::domain {

namespace {

constexpr double room = 10'000; // m beyond the outermost places
constexpr double smallestCell = 500; // m

// The middle of the places; of those on both sides of the antimeridian too.
GeoPoint middleOf(std::span<const GeoPoint> places)
{
    const GeoPoint first = places.front();
    double north = 0;
    double east = 0;
    for (const GeoPoint& place : places) {
        north += place.latitude() - first.latitude();
        east += longitudeDifference(first.longitude(), place.longitude());
    }
    const auto count = static_cast<double>(places.size());
    return toGeoPoint(first.latitude() + north / count, first.longitude() + east / count);
}

} // namespace

std::optional<RegionGrid> gridAround(std::span<const GeoPoint> places, std::size_t most)
{
    if (places.empty()) return std::nullopt;
    return gridOn(RegionalPlane(middleOf(places)), places, most);
}

std::optional<RegionGrid> gridOn(
    const RegionalPlane& plane, std::span<const GeoPoint> places, std::size_t most)
{
    if (places.empty()) return std::nullopt;
    RegionGrid region{plane, {}};
    PlaneOffset low = region.plane.offsetOf(places.front());
    PlaneOffset high = low;
    for (const GeoPoint& place : places) {
        const PlaneOffset at = region.plane.offsetOf(place);
        low = {std::min(low.eastMetres, at.eastMetres), std::min(low.northMetres, at.northMetres)};
        high = {std::max(high.eastMetres, at.eastMetres), std::max(high.northMetres, at.northMetres)};
    }
    const double width = high.eastMetres - low.eastMetres + 2 * room;
    const double height = high.northMetres - low.northMetres + 2 * room;
    const double cell = std::max(smallestCell, std::max(width, height) / static_cast<double>(most));
    region.grid.southWest = {low.eastMetres - room, low.northMetres - room};
    region.grid.cell = Metres{cell};
    region.grid.columns = static_cast<std::size_t>(std::ceil(width / cell - 1e-9));
    region.grid.rows = static_cast<std::size_t>(std::ceil(height / cell - 1e-9));
    return region;
}

} // namespace duskrow::domain
