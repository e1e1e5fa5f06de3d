// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/base/units.h"
#include "formats/picture.h"

namespace duskrow::formats {

// A bar for each week; one without a median is hatched and says so.
struct WeekBar {
    std::string label; // "28 Jun"
    std::optional<domain::Moths> median;
    std::string words; // the figure over the bar: "about 35"
};

// All words come translated.
struct WeekChartInput {
    double width = 420;
    double height = 220;
    double textScale = 1; // 1 to 2
    std::vector<WeekBar> weeks = {}; // at most 20 are drawn, the last ones
    std::string title = {};
    std::string description = {};
    std::string gapLabel = {};
};

// The weeks of a season as bars, the last one in the colour of the present. A figure that has no room over
// its bar is left out: the table beside the chart has all.
Picture weekChart(const WeekChartInput& input);

} // namespace duskrow::formats
