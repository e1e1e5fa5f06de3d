// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "formats/picture.h"

namespace duskrow::formats {

struct BandYear {
    std::string label; // "2026, so far"
    std::vector<std::size_t> inBand; // traps by level, the lowest first
};

// How the traps of each year shared out over the bands. All words come translated.
struct BandYearsInput {
    double width = 360;
    double textScale = 1; // 1 to 2
    std::vector<BandYear> years = {}; // the latest first
    std::vector<std::string> bands = {}; // names for the key, the lowest first
    std::string title = {};
    std::string description = {};
};

// One row a year: parts as long as their share of the traps, in the colour of their band and with its dots
// where there is room. The key stands below.
Picture bandYears(const BandYearsInput& input);

} // namespace duskrow::formats
