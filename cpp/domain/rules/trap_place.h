// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/rules/trap_facts.h"

namespace duskrow::domain {

struct TrapSpot {
    GeoPoint place;
    std::optional<Millimetres> accuracy; // of its fix; nothing for a place that was typed without one
};

// Where a trap stood at the end of a day: as set up, or as the last move up to then says.
std::optional<TrapSpot> spotOn(const TrapFacts& facts, LocalDay day);

} // namespace duskrow::domain
