// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <vector>

#include "domain/rules/region_grid.h"
#include "domain/rules/region_summary.h"
#include "tool/trap_results.h"

namespace duskrow::tool {

struct DistrictSeason {
    QString name; // empty for traps whose site names no district
    domain::RegionSeason season;
    const domain::Trap* highest = nullptr;
};

// The surface between the traps, and what it is of.
struct SurfaceOfRegion {
    domain::RegionalSurface surface;
    std::optional<domain::RegionGrid> where; // nothing without places
    std::vector<domain::Moths> edges; // the bands' lower edges, but the lowest
    bool isSoFar = false; // of seasons that still go on
};

// All traps of one pest and trap type; another type catches differently and is never added.
struct RegionResult {
    std::string pest;
    std::string trapType;
    const domain::Protocol* protocol = nullptr;
    std::span<const domain::Band> bands; // none where nobody published any
    DistrictSeason whole;
    std::vector<DistrictSeason> districts; // in the order of the records
    SurfaceOfRegion surface;
};

// They look on both.
std::vector<RegionResult> regionResults(
    const SeasonRecords& records, const std::vector<TrapResult>& results, domain::LocalDay today);

} // namespace duskrow::tool
