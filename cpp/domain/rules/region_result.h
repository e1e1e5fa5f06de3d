// SPDX-License-Identifier: MIT
#pragma once

#include "domain/rules/region_grid.h"
#include "domain/rules/region_summary.h"

namespace duskrow::domain {

// One trap of a region, with where it stands. It looks on.
struct RegionMember {
    const Trap* trap = nullptr;
    const TrapSeason* season = nullptr;
    const Band* band = nullptr; // nothing while its season takes none
    Uuid district = {}; // nil for none
    std::optional<GeoPoint> place = {};
};

struct DistrictSeason {
    Uuid district = {}; // nil for traps whose site names no district, and for a whole region
    RegionSeason season;
    std::vector<const Trap*> traps; // as its season numbers them
    const Trap* highest = nullptr; // for the desk alone
};

// The surface between the traps, and what it is of.
struct SurfaceOfRegion {
    RegionalSurface surface;
    std::optional<RegionGrid> where; // nothing without places
    std::vector<Moths> edges; // the bands' lower edges, but the lowest
    bool isSoFar = false; // of seasons that still go on
};

// All traps of one pest and trap type; another type catches differently and is never added.
struct RegionResult {
    DistrictSeason whole;
    std::vector<DistrictSeason> districts; // in the order in which the traps name them
};

// bands  of the trap type, as bandsFor gives them; none where nobody published any
RegionResult regionResult(std::span<const RegionMember> traps, std::span<const Band> bands);

// Whole seasons where there are any, else all as they are so far: the two are never mixed. Traps counted in
// full alone.
//
// most   cells along the longer side
// plane  on which the cells are to lie; nothing for one around these traps
SurfaceOfRegion surfaceOfRegion(std::span<const RegionMember> traps, std::span<const Band> bands,
    std::size_t most, const std::optional<RegionalPlane>& plane = {});

} // namespace duskrow::domain
