// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "domain/rules/region_years.h"
#include "tool/region_results.h"

namespace duskrow::tool {

// One line of JSON. The cells of a surface stand row by row from the south-west corner.
std::string regionJson(const SeasonRecords& records, const std::vector<RegionOfKind>& regions,
    const std::vector<std::vector<domain::RegionYear>>& years, domain::LocalDay today);

} // namespace duskrow::tool
