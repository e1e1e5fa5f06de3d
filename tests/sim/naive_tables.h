// SPDX-License-Identifier: MIT
#pragma once

#include "sim/naive_roster.h"

namespace duskrow::store {
class Reader;
}

// What a set of changes comes to, worked out a second time from sync/FORMAT.md sections 2 and 6; and what a
// store's tables say. Equal texts are equal records, differences, things kept aside and stale rulings.
namespace duskrow::sim {

using Text = std::set<std::string>; // one line for each row

Text naiveTables(
    const Uuid& programme, const std::set<StreamId>& founders, const Changes& all, const StreamId& own);
Text tablesOf(store::Reader& reader);

// The first lines in which they differ, or nothing.
std::string difference(const Text& expected, const Text& found);

} // namespace duskrow::sim
