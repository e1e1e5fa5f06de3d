// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <span>
#include <vector>

#include "domain/rules/flag.h"
#include "domain/rules/season_week.h"
#include "domain/rules/trap_facts.h"

namespace duskrow::domain {

// What a desk has of one season. It only looks on: the records must outlive it.
struct SeasonToCheck {
    std::vector<TrapFacts> traps = {};
    std::span<const Visit> withoutTrap = {}; // their trap is not here, or was withdrawn
    // Who wrote a visit down; one that is not named was written by nobody known.
    std::map<Uuid, Uuid> authors = {};
    SeasonWeek week = {};
};

// Every flag of a season, the latest day first. Records are looked at and never changed.
//
// A catch is held against the traps around it; only where that cannot be done is it held against the visit
// before. Who stood at a trap is the observer as noted, else the author.
std::vector<Flag> seasonFlags(const SeasonToCheck& season, LocalDay today);

} // namespace duskrow::domain
