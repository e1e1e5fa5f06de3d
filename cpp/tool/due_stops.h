// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/rules/due.h"
#include "tool/season_records.h"
#include "tool/trap_results.h"

namespace duskrow::tool {

// One trap with what is due there, soonest first.
struct DueStop {
    const domain::Trap* trap = nullptr; // among the records
    std::vector<domain::DueItem> items;
};

// The traps at which something is due by some days ahead of today, soonest first.
domain::Result<std::vector<DueStop>> dueStops(const SeasonRecords& records, const domain::SeasonWeek& week,
    domain::LocalDay today, std::chrono::days ahead, ProtocolShelf& shelf);

} // namespace duskrow::tool
