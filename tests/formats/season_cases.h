// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "formats/season_chart.h"

// Invented seasons of one trap, each with its name.
struct SeasonCase {
    std::string name;
    duskrow::formats::SeasonChartInput input;
};

std::vector<SeasonCase> seasonCases();
