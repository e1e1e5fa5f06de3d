// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "domain/protocol/protocol.h"
#include "domain/rules/trap_season.h"

namespace duskrow::domain {

// How the catches of several traps lie. Quartiles go linearly between the sorted catches.
// Source  R. J. Hyndman and Y. Fan, 1996, definition 7
struct CatchSpread {
    std::size_t traps = 0; // 0: nothing below means anything
    double mean = 0;
    double lowerQuartile = 0;
    double median = 0;
    double upperQuartile = 0;
    double highest = 0;
    std::size_t withMoths = 0; // traps that caught any
};

CatchSpread spreadOf(std::vector<double> catches);

// One trap of a region. It looks on.
struct RegionTrap {
    const TrapSeason* season = nullptr;
    const Band* band = nullptr; // nothing while its season takes none
};

struct RegionWeek {
    ReportingWeek week;
    CatchSpread catches; // of traps counted in full, in moths of the week
    std::size_t atLeast = 0; // traps whose count is a minimum, left out of the spread
    std::size_t uncounted = 0; // traps that nobody counted: that is not zero
    std::optional<std::size_t> highest; // which of the traps counted in full; for the desk alone
};

// What several traps of one pest and trap type come to: a district, or a whole region.
struct RegionSeason {
    CatchSpread catches; // of the season so far, by traps counted in full
    std::optional<std::size_t> highest; // which of the traps, by its place in the list; for the desk alone
    std::size_t minimum = 0; // traps whose total is a minimum, left out of the spread
    std::size_t uncounted = 0;
    std::vector<std::size_t> inBand; // traps whose season takes a band, by its level, the lowest first
    std::vector<RegionWeek> weeks; // from the first to the last that any trap stood in
};

// bands  of the trap type, as bandsFor gives them; none where nobody published any
RegionSeason regionSeason(std::span<const RegionTrap> traps, std::span<const Band> bands);

} // namespace duskrow::domain
