// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "domain/protocol/protocol.h"
#include "domain/rules/season_outlook.h"
#include "domain/rules/trap_season.h"
#include "formats/season_chart.h"

namespace duskrow::app {

// All that a chart of one trap's season is drawn from. It only looks on.
struct ChartedSeason {
    const domain::Trap& trap;
    const domain::TrapSeason& season;
    const domain::Protocol& protocol;
    const domain::SeasonRules& rules;
    const std::optional<domain::SeasonOutlook>& outlook;
    int year = 0;
};

// The chart without its size. Bands lie under a season that is whole or may still become so; they bear their
// names only under a whole one, since a catch so far has no band.
formats::SeasonChartInput chartInputOf(const ChartedSeason& charted);

} // namespace duskrow::app
