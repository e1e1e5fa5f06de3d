// SPDX-License-Identifier: MIT
#include "formats/map/region_scene.h"

#include <algorithm>
#include <tuple>

namespace duskrow::formats {

using namespace domain;

namespace {

ScenePath pathOf(const std::vector<LonLat>& places, const RegionalPlane& plane)
{
    ScenePath path;
    path.points.reserve(places.size());
    for (const LonLat place : places) {
        path.points.push_back(plane.offsetOf(toGeoPoint(place.latitude, place.longitude)));
        path.extent.take(path.points.back());
    }
    return path;
}

} // namespace

MapExtent RegionScene::extent() const
{
    MapExtent all;
    for (const SceneTrap& trap : traps) all.take(trap.place);
    if (!all.isEmpty) return all;
    for (const ScenePath& path : paths) {
        if (path.extent.isEmpty) continue;
        all.take(path.extent.low);
        all.take(path.extent.high);
    }
    return all;
}

void putInOrder(std::vector<SceneTrap>& traps)
{
    std::ranges::stable_sort(traps, {},
        [](const SceneTrap& trap) { return std::tuple(trap.standing != TrapStanding::Missing, trap.soFar); });
}

std::vector<ScenePath> pathsOf(const Overlay& overlay, const RegionalPlane& plane)
{
    std::vector<ScenePath> paths;
    for (const OverlayArea& area : overlay.areas)
        for (const Polygon& polygon : area.polygons)
            for (const Ring& ring : polygon) paths.push_back(pathOf(ring, plane));
    for (const auto& line : overlay.lines) paths.push_back(pathOf(line, plane));
    return paths;
}

std::int8_t chanceStep(double chance)
{
    if (chance >= 2.0 / 3) return 4;
    if (chance >= 1.0 / 3) return 3;
    return chance >= 1.0 / 8 ? 2 : 1;
}

SceneSurface sceneSurface(const RegionalSurface& surface, const SurfaceGrid& grid, std::size_t edge)
{
    SceneSurface made{grid, {}};
    made.cells.reserve(surface.cells.size());
    for (const SurfaceCell& cell : surface.cells) {
        const bool isKnown = cell.cover != CellCover::Masked && edge < cell.chances.size();
        made.cells.push_back({isKnown ? chanceStep(cell.chances[edge]) : std::int8_t{0},
            isKnown ? cell.cover : CellCover::Masked});
    }
    return made;
}

} // namespace duskrow::formats
