// SPDX-License-Identifier: MIT
#pragma once

#include "domain/rules/region_summary.h"

namespace duskrow::domain {

// One trap in one year, to be held against other years. Fields rotate: what stays is a district, or whoever
// keeps the trap.
struct TrapOfYear {
    Uuid district = {}; // nil for none
    Uuid keeper = {};
    Moths soFar = {}; // as on the day of that year
    bool isCounted = false; // by then
    bool isMinimum = false;
    std::optional<std::size_t> level = {}; // of its band, 0 the lowest; nothing where it takes none
};

// What the traps of one district or keeper had caught by a day.
struct GroupOfYear {
    Uuid group = {};
    CatchSpread catches; // of traps counted in full
    std::size_t minimum = 0; // traps whose total is a minimum, left out of the spread
    std::size_t uncounted = 0;
};

struct RegionYear {
    int year = 0;
    LocalDay on = {}; // the day of that year which the catches are of
    bool isSoFar = false; // its bands are of seasons that still go on
    GroupOfYear all;
    std::vector<GroupOfYear> districts; // by id
    std::vector<GroupOfYear> keepers; // by id
    std::vector<std::size_t> inBand; // by level, the lowest first
    std::size_t bandless = 0; // traps that take none
};

// The same day of another year; the last of February for the 29th where there is none.
LocalDay sameDayIn(LocalDay day, int year);

// traps   of one pest and trap type
// levels  how many bands there are
RegionYear regionYear(int year, LocalDay on, std::span<const TrapOfYear> traps, std::size_t levels);

} // namespace duskrow::domain
