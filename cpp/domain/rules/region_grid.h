// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "domain/rules/regional_plane.h"
#include "domain/rules/regional_surface.h"

namespace duskrow::domain {

// The plane and the cells that hold some places, with room around them.
struct RegionGrid {
    RegionalPlane plane;
    SurfaceGrid grid;
};

// Cells are as small as lets the longer side have `most` of them, and never below 500 m. Nothing without a
// place.
std::optional<RegionGrid> gridAround(std::span<const GeoPoint> places, std::size_t most);
// The same on a plane that is there already.
std::optional<RegionGrid> gridOn(
    const RegionalPlane& plane, std::span<const GeoPoint> places, std::size_t most);

} // namespace duskrow::domain
