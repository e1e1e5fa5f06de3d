// SPDX-License-Identifier: MIT
#include "domain/rules/region_summary.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace duskrow::domain {

namespace {

double quantileOf(std::span<const double> sorted, double part)
{
    const double at = part * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(std::floor(at));
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (at - std::floor(at)) * (sorted[above] - sorted[below]);
}

void addWeeks(RegionSeason& region, std::span<const RegionTrap> traps)
{
    struct Week {
        ReportingWeek week;
        std::vector<double> moths;
        std::size_t atLeast = 0;
        std::size_t uncounted = 0;
        std::optional<std::size_t> highest;
        double most = 0;

        void take(std::size_t trap, double caught)
        {
            moths.push_back(caught);
            if (highest && caught <= most) return;
            highest = trap;
            most = caught;
        }
    };
    std::map<LocalDay, Week> weeks;
    for (std::size_t i = 0; i < traps.size(); ++i)
        for (const WeekCatch& caught : traps[i].season->weeks) {
            Week& week = weeks[caught.week.first];
            week.week = caught.week;
            if (!caught.moths)
                ++week.uncounted;
            else if (caught.isAtLeast)
                ++week.atLeast;
            else
                week.take(i, *caught.moths);
        }
    for (auto& [first, week] : weeks)
        region.weeks.push_back(
            {week.week, spreadOf(std::move(week.moths)), week.atLeast, week.uncounted, week.highest});
}

} // namespace

CatchSpread spreadOf(std::vector<double> catches)
{
    CatchSpread spread;
    if (catches.empty()) return spread;
    std::sort(catches.begin(), catches.end());
    spread.traps = catches.size();
    spread.mean = std::accumulate(catches.begin(), catches.end(), 0.0) / static_cast<double>(catches.size());
    spread.lowerQuartile = quantileOf(catches, 0.25);
    spread.median = quantileOf(catches, 0.5);
    spread.upperQuartile = quantileOf(catches, 0.75);
    spread.highest = catches.back();
    spread.withMoths = static_cast<std::size_t>(
        std::count_if(catches.begin(), catches.end(), [](double moths) { return moths > 0; }));
    return spread;
}

RegionSeason regionSeason(std::span<const RegionTrap> traps, std::span<const Band> bands)
{
    RegionSeason region;
    region.inBand.resize(bands.size());
    std::vector<double> totals;
    for (std::size_t i = 0; i < traps.size(); ++i) {
        const TrapSeason& season = *traps[i].season;
        if (traps[i].band)
            for (std::size_t level = 0; level < bands.size(); ++level)
                if (bands[level].id == traps[i].band->id) ++region.inBand[level];
        if (!season.countedUntil) {
            ++region.uncounted;
            continue;
        }
        if (season.isMinimum()) {
            ++region.minimum;
            continue;
        }
        totals.push_back(static_cast<double>(season.total.value()));
        if (!region.highest || season.total > traps[*region.highest].season->total) region.highest = i;
    }
    region.catches = spreadOf(std::move(totals));
    addWeeks(region, traps);
    return region;
}

} // namespace duskrow::domain
