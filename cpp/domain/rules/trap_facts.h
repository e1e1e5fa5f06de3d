// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "domain/records/trap.h"
#include "domain/records/visit.h"

namespace duskrow::domain {

// All that is known of one trap. It only looks on: the records must outlive it. Withdrawn records and ones
// without a day may be among them and are passed over.
struct TrapFacts {
    const Trap& trap;
    std::span<const Visit> visits = {}; // of this trap, in the order of their days and moments
    std::span<const Service> services = {}; // of this trap, in any order
    std::span<const Sample> samples = {}; // of this trap, in any order
    // Visits whose count a coordinator left out of the picture, of any trap, in the order of their ids.
    std::span<const Uuid> leftOut = {};
};

} // namespace duskrow::domain
