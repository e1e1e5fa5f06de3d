// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <vector>

#include "domain/rules/threshold.h"

namespace duskrow::domain {

struct ThresholdCell {
    LarvaePerSquareMetre larvae; // unrounded
    bool isPublished; // cost and price lie within the printed table, in its own money, in a usual season
};

// Thresholds around the user's own point, in the user's units: three steps of each axis to either side.
struct ThresholdTable {
    std::vector<double> costs; // rows, ascending
    std::vector<double> prices; // columns, ascending
    std::vector<std::vector<ThresholdCell>> cells; // as [cost][price]
    std::size_t ownCost = 0; // the row and the column of the user's point
    std::size_t ownPrice = 0;
};

ThresholdTable thresholdTable(const ThresholdRule& rule, const Threshold& threshold);

// The values of one axis: the user's own in the middle, to either side the three nearest multiples of a step
// of 1, 2 or 5 times a power of ten, at most an eighth of the value. All above 0.
std::vector<double> stepsAround(double own);

} // namespace duskrow::domain
