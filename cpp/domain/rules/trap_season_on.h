// SPDX-License-Identifier: MIT
#pragma once

#include "domain/rules/trap_season.h"

namespace duskrow::domain {

// The season of a trap as it was known at the end of a day: what came later does not exist yet for it.
//
// facts  later visits may be among them
// rules  as seasonRulesOf gives them, whatever day they look from
TrapSeason trapSeasonOn(const TrapFacts& facts, const SeasonRules& rules, LocalDay day);

} // namespace duskrow::domain
