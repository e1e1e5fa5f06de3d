// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/rules/stop_rule.h"
#include "formats/picture.h"

namespace duskrow::formats {

// The running total of a walk between the two lines that end it. All words come translated.
struct StopLinesInput {
    double width = 360;
    double height = 260;
    double textScale = 1; // 1 to 2
    domain::StopPlan plan = {};
    std::vector<domain::Larvae> totals = {}; // after each stop, ascending
    std::string title = {};
    std::string description = {};
    std::string aboveLabel = {}; // "above"
    std::string onLabel = {}; // "keep looking"
    std::string belowLabel = {}; // "below"
    std::string stopsLabel = {}; // "stops", under the lower axis
};

// Nothing is drawn below 120 x 120, as while a screen has no size yet.
Picture stopLinesChart(const StopLinesInput& input);

} // namespace duskrow::formats
