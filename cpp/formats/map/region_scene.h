// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/rules/region_grid.h"
#include "formats/bulletin/overlay.h"
#include "formats/bulletin/region_map.h"
#include "formats/map/map_view.h"

namespace duskrow::formats {

struct SceneTrap {
    std::size_t trap = 0; // which one, for whoever made the scene
    domain::PlaneOffset place;
    TrapStanding standing = TrapStanding::Counted;
    domain::Moths soFar = {};
    int level = 0; // 1 to 4; 0 where no band can be named
};

// A line, or the ring of an area.
struct ScenePath {
    std::vector<domain::PlaneOffset> points;
    MapExtent extent;
};

// How likely a further trap would catch more than one edge, in the cells of a grid.
struct SceneSurface {
    domain::SurfaceGrid grid;
    struct Cell {
        std::int8_t chance = 0; // 1 to 4: below 1 in 8, from 1 in 8, 1 in 3, 2 in 3
        domain::CellCover cover = domain::CellCover::Masked;
        bool operator==(const Cell&) const = default;
    };
    std::vector<Cell> cells; // in the order of the grid
};

// A region laid out on its plane, for one week.
struct RegionScene {
    domain::RegionalPlane plane{domain::GeoPoint{}};
    std::vector<SceneTrap> traps; // as they are drawn: the most important last
    std::vector<ScenePath> paths;
    std::optional<SceneSurface> surface;

    [[nodiscard]] MapExtent extent() const; // of the traps; of the paths where there is no trap
};

// Those nobody counted first, then by what they caught, so that a high catch lies on top.
void putInOrder(std::vector<SceneTrap>& traps);

// Outlines of areas and lines, on the plane.
std::vector<ScenePath> pathsOf(const Overlay& overlay, const domain::RegionalPlane& plane);

// 1 to 4, as SceneSurface has them. Nothing else is meant by a chance.
std::int8_t chanceStep(double chance);

// edge  which of the surface's edges
SceneSurface sceneSurface(
    const domain::RegionalSurface& surface, const domain::SurfaceGrid& grid, std::size_t edge);

} // namespace duskrow::formats
