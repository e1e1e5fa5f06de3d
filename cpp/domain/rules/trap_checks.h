// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "domain/rules/catch_intervals.h"
#include "domain/rules/flag.h"

namespace duskrow::domain {

// The flags that the records of one trap give by themselves, visit by visit: its days, its counts on one day,
// its place. A catch far above the visit before is among them, for whoever has no traps around it to hold it
// against.
//
// catches  of the same facts
// today    a visit is asked about from two days after it: the clock of a desk may lag behind
// Source   further on as in visit_questions.h. Far above before: a rate over ten times the one before and
//          more than 20 moths, own choice, no source
std::vector<Flag> trapFlags(const TrapFacts& facts, const CatchIntervals& catches, LocalDay today);

} // namespace duskrow::domain
