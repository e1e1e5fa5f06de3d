// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <vector>

#include "domain/rules/region_result.h"
#include "tool/trap_results.h"

namespace duskrow::tool {

// All traps of one pest and trap type; another type catches differently and is never added.
struct RegionOfKind {
    std::string pest;
    std::string trapType;
    const domain::Protocol* protocol = nullptr;
    std::span<const domain::Band> bands; // none where nobody published any
    domain::RegionResult result;
    domain::SurfaceOfRegion surface;
};

// They look on both.
std::vector<RegionOfKind> regionResults(
    const SeasonRecords& records, const std::vector<TrapResult>& results, domain::LocalDay today);

} // namespace duskrow::tool
