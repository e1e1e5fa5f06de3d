// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "tool/trap_results.h"

namespace duskrow::tool {

// The season as JSON for other programs: keys and codes stay the same in every language, days are
// year-month-day, what was not observed is null.
std::string seasonJson(
    const SeasonRecords& records, const std::vector<TrapResult>& results, domain::LocalDay today);

} // namespace duskrow::tool
