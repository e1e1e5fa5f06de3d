// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "formats/season_chart.h"

namespace duskrow::formats {

// Sums the intervals; what the curve ends at.
domain::Moths totalOf(const std::vector<SeasonInterval>& intervals);

// A fan is drawn while the season goes on and something was counted.
bool hasFan(const SeasonChartInput& input);

// The highest catch that the chart shows. An empty season shows all bands; one with counts shows the next
// edge above the catch (or the fan) when a quarter of the way is gone, else a third more than the catch.
double topOfScale(const SeasonChartInput& input);

// Round steps of 1, 2 or 5 times a power of ten, about three below the top, whole moths.
std::vector<domain::Moths> roundSteps(double top);

// Where days and catches lie in the picture.
struct SeasonScale {
    Frame plot;
    domain::LocalDay firstDay;
    double days = 1;
    double top = 1;
    double smallSize = 13; // of the words along the axes
    double size = 16; // of all others
    std::vector<domain::Moths> levels; // numbers on the upright axis, ascending

    [[nodiscard]] double x(domain::LocalDay day) const;
    [[nodiscard]] double y(double moths) const;
    [[nodiscard]] double y(domain::Moths moths) const { return y(static_cast<double>(moths.value())); }
};

// The part of the plot that a band covers; without height when it lies above the top.
Frame frameOfBand(const std::vector<SeasonBand>& bands, std::size_t i, const SeasonScale& scale);

SeasonScale seasonScale(const SeasonChartInput& input);

// A catch in the reader's way.
std::string numberText(const SeasonChartInput& input, domain::Moths moths);

} // namespace duskrow::formats
