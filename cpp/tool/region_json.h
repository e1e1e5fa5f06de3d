// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "tool/region_results.h"

namespace duskrow::tool {

// One line of JSON. The cells of a surface stand row by row from the south-west corner.
std::string regionJson(
    const SeasonRecords& records, const std::vector<RegionOfKind>& regions, domain::LocalDay today);

} // namespace duskrow::tool
