// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/rules/due.h"
#include "domain/rules/trap_now.h"

namespace duskrow::domain {

// The parts of dueOf that keep a trap working. None once traps come down.
std::optional<DueItem> lureDue(const TrapNow& now, const DueRules& rules, LocalDay today);
std::optional<DueItem> stripDue(const TrapNow& now, const DueRules& rules, LocalDay today);

// Raising the trap so that the entrance stays over the crop until the visit after the next.
//
// rule       fixed height: never due
// nextVisit  when the next count is due; may lie in the past
std::optional<DueItem> raiseDue(
    const TrapNow& now, const DueRules& rules, HeightRule rule, LocalDay nextVisit, LocalDay today);

} // namespace duskrow::domain
