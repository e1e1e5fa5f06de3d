// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "formats/season_chart.h"
#include "formats/season_scale.h"
#include "formats/word_placer.h"

namespace duskrow::formats {

// The words of a season chart with the signs that belong to them, placed clear of what is drawn.
//
// placer  knows the curves and bars
std::vector<Primitive> seasonWords(
    const SeasonChartInput& input, const SeasonScale& scale, WordPlacer& placer);

} // namespace duskrow::formats
