// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/log/edit.h"
#include "domain/records/visit.h"

// The work that exchanges are measured by: 10,000 visits of 13 fields over 400 traps; then 1,000 edits on
// each of two sides apart, 100 visits touched by both, half of them in the same field. The same amounts as in
// the general-purpose programs measured beside it.
namespace duskrow::bench {

inline constexpr std::size_t editsOfEachSide = 1000;
inline constexpr std::size_t touchedByBoth = 100;

struct ReferenceWork {
    std::vector<domain::Visit> visits;
    std::vector<domain::Uuid> sites; // of each visit
    // Each side's edits: which visit, and what it becomes.
    std::vector<std::pair<std::size_t, domain::Visit>> left;
    std::vector<std::pair<std::size_t, domain::Visit>> right;
};

ReferenceWork makeReferenceWork(std::size_t count, unsigned seed);

} // namespace duskrow::bench
