// SPDX-License-Identifier: MIT
#pragma once

#include "demo/dice.h"
#include "domain/records/visit.h"

namespace duskrow::demo {

// A catch too large to count moth by moth: three cups of it are counted and the whole is measured.
//
// caught  what is in the bucket; the visit gets what its cups make of it, with a range
void countByCups(domain::Visit& visit, std::int64_t caught, Dice& dice);

} // namespace duskrow::demo
