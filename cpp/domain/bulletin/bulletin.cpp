// SPDX-License-Identifier: MIT
#include "domain/bulletin/bulletin.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "domain/rules/bands.h"
#include "domain/rules/region_summary.h"

namespace duskrow::domain {

namespace {

using Reports = std::vector<const WeekReport*>;

std::int64_t stepAt(double moths)
{
    return moths < 20 ? 2 : moths < 100 ? 5 : moths < 1000 ? 10 : 50;
}

// Made round, but never up into the next band.
Moths roundWithin(std::span<const Band> bands, double moths)
{
    const Moths round = madeRound(moths);
    const Moths whole{static_cast<std::int64_t>(moths)};
    if (bands.empty() || bandOf(bands, round).level <= bandOf(bands, whole).level) return round;
    return round - Moths{stepAt(moths)};
}

FlightPhase phaseOfMost(const Reports& inFull)
{
    constexpr std::array phases{
        FlightPhase::NoneYet, FlightPhase::Rising, FlightPhase::NearHighest, FlightPhase::PastHighest};
    FlightPhase found = FlightPhase::NotKnown;
    std::ptrdiff_t most = 0;
    for (const FlightPhase phase : phases) {
        const auto traps = std::count_if(
            inFull.begin(), inFull.end(), [phase](const WeekReport* one) { return one->phase == phase; });
        if (traps <= most) continue;
        most = traps;
        found = phase;
    }
    return found;
}

AreaFigures figuresOf(const Reports& reports, std::span<const Band> bands)
{
    AreaFigures figures;
    Reports inFull;
    std::vector<double> week;
    std::vector<double> season;
    Moths highest{0};
    for (const WeekReport* report : reports) {
        figures.expected += report->isExpected || report->isCounted ? 1 : 0;
        figures.counted += report->isCounted ? 1 : 0;
        if (!report->moths) continue;
        inFull.push_back(report);
        week.push_back(*report->moths);
        season.push_back(static_cast<double>(report->soFar.value()));
        highest = std::max(highest, report->soFar);
        figures.caughtAny = figures.caughtAny || *report->moths > 0;
    }
    const double seasonMedian = spreadOf(std::move(season)).median;
    figures.weekMedian = madeRound(spreadOf(std::move(week)).median);
    figures.seasonMedian = roundWithin(bands, seasonMedian);
    figures.phase = phaseOfMost(inFull);
    if (bands.empty()) return figures;
    figures.typicalLevel = bandOf(bands, Moths{static_cast<std::int64_t>(seasonMedian)}).level;
    figures.highestLevel = bandOf(bands, highest).level;
    return figures;
}

// From the highest band down: what is of fewer farms than may be shown is told together with the next lower.
std::vector<BandGroup> groupsOf(std::span<const WeekReport> reports, std::span<const Band> bands)
{
    std::vector<BandGroup> groups;
    FarmTally farms;
    BandGroup open;
    bool isOpen = false;
    for (auto band = bands.rbegin(); band != bands.rend(); ++band) {
        if (!isOpen) open = {band->level, band->level, 0};
        open.lowest = band->level;
        for (const WeekReport& report : reports) {
            if (!report.moths || bandOf(bands, report.soFar).level != band->level) continue;
            ++open.traps;
            farms.add(report.reporter.farm);
        }
        isOpen = !farms.isEmpty() && farms.farms() < fewestFarms;
        if (isOpen) continue;
        groups.push_back(open);
        farms = {};
    }
    if (isOpen) {
        // What is left at the bottom joins the lowest group that is not empty.
        while (!groups.empty() && groups.back().traps == 0) groups.pop_back();
        if (!groups.empty()) {
            open.highest = groups.back().highest;
            open.traps += groups.back().traps;
            groups.pop_back();
        }
        groups.push_back(open);
    }
    std::reverse(groups.begin(), groups.end());
    return groups;
}

template <typename Belongs>
Reports chosen(std::span<const WeekReport> reports, Belongs belongs)
{
    Reports found;
    for (const WeekReport& report : reports)
        if (belongs(report.reporter)) found.push_back(&report);
    return found;
}

CellWeek cellWeek(GridCell cell, const Reports& reports, std::span<const Band> bands)
{
    Metres worst{0};
    for (const WeekReport* report : reports) worst = std::max(worst, report->fix);
    return {cell, uncertaintyOf(cell, worst), figuresOf(reports, bands)};
}

} // namespace

Moths madeRound(double moths)
{
    if (!(moths > 0)) return Moths{0};
    const std::int64_t step = stepAt(moths);
    return Moths{step * std::max<std::int64_t>(1, std::llround(moths / static_cast<double>(step)))};
}

PublishedAreas areasOf(std::span<const WeekReport> reports, const PublishedAreas* within)
{
    std::vector<Reporter> reporters;
    for (const WeekReport& report : reports)
        if (report.moths) reporters.push_back(report.reporter);
    return publishedAreas(reporters, within);
}

void fillIn(Bulletin& bulletin, std::span<const WeekReport> reports, std::span<const std::string> names,
    const PublishedAreas& areas)
{
    bulletin.whole.reset();
    bulletin.bandGroups.clear();
    bulletin.districts.clear();
    bulletin.cells.clear();
    if (areas.whole) {
        bulletin.whole = figuresOf(chosen(reports, [](const Reporter&) { return true; }), bulletin.bands);
        bulletin.bandGroups = groupsOf(reports, bulletin.bands);
    }
    std::vector<Reports> byDistrict(names.size());
    std::map<GridCell, Reports> byCell;
    for (const WeekReport& report : reports) {
        const auto& [farm, district, cell] = report.reporter;
        if (district && *district < names.size()) byDistrict[*district].push_back(&report);
        if (areas.hasCell(cell)) byCell[*cell].push_back(&report);
    }
    for (std::size_t i = 0; i < names.size(); ++i) {
        bulletin.districts.push_back({names[i], std::nullopt});
        if (areas.hasDistrict(i))
            bulletin.districts.back().figures = figuresOf(byDistrict[i], bulletin.bands);
    }
    for (const auto& [cell, inCell] : byCell)
        bulletin.cells.push_back(cellWeek(cell, inCell, bulletin.bands));
}

} // namespace duskrow::domain
