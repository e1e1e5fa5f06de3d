// SPDX-License-Identifier: MIT
#include "tool/region_results.h"

#include <algorithm>

#include "domain/rules/bands.h"
#include "domain/rules/trap_place.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

constexpr std::size_t mostCells = 100; // along the longer side

using Traps = std::vector<const TrapResult*>;

DistrictSeason districtSeason(const QString& name, const Traps& traps, std::span<const Band> bands)
{
    std::vector<RegionTrap> of;
    of.reserve(traps.size());
    for (const TrapResult* trap : traps) of.push_back({&trap->season, trap->band});
    DistrictSeason district{name, regionSeason(of, bands), nullptr};
    if (district.season.highest) district.highest = traps[*district.season.highest]->trap;
    return district;
}

// Whole seasons where there are any, else all as they are so far: the two are never mixed.
SurfaceOfRegion surfaceOf(
    const SeasonRecords& records, const Traps& traps, std::span<const Band> bands, LocalDay today)
{
    SurfaceOfRegion made;
    made.isSoFar = std::none_of(
        traps.begin(), traps.end(), [](const TrapResult* trap) { return trap->season.takesBand(); });
    std::vector<GeoPoint> places;
    std::vector<Moths> totals;
    for (const TrapResult* trap : traps) {
        const bool isWhole = trap->season.countedUntil && !trap->season.isMinimum();
        const auto spot = spotOn(records.facts(*trap->trap), today);
        if (!isWhole || !spot || (!made.isSoFar && !trap->season.takesBand())) continue;
        places.push_back(spot->place);
        totals.push_back(trap->season.total);
    }
    for (const Band& band : bands)
        if (band.from > Moths{0}) made.edges.push_back(band.from);
    made.where = gridAround(places, mostCells);
    std::vector<SurfaceTrap> points;
    for (std::size_t i = 0; i < places.size(); ++i)
        points.push_back({made.where->plane.offsetOf(places[i]), totals[i]});
    made.surface = regionalSurface(points, made.where ? made.where->grid : SurfaceGrid{}, made.edges);
    return made;
}

RegionResult regionResult(const SeasonRecords& records, const Traps& traps, LocalDay today)
{
    RegionResult region;
    const TrapResult& first = *traps.front();
    region.pest = first.trap->pest;
    region.trapType = first.trap->trapType;
    region.protocol = first.protocol;
    if (const auto bands = bandsFor(*first.protocol, first.trap->trapType)) region.bands = *bands;
    region.whole = districtSeason({}, traps, region.bands);
    for (auto from = traps.begin(); from != traps.end();) {
        const QString name = records.districtOf(*(*from)->trap);
        const auto to = std::find_if(from, traps.end(),
            [&](const TrapResult* trap) { return records.districtOf(*trap->trap) != name; });
        region.districts.push_back(districtSeason(name, {from, to}, region.bands));
        from = to;
    }
    region.surface = surfaceOf(records, traps, region.bands, today);
    return region;
}

} // namespace

std::vector<RegionResult> regionResults(
    const SeasonRecords& records, const std::vector<TrapResult>& results, LocalDay today)
{
    std::map<std::pair<std::string, std::string>, Traps> byKind;
    for (const TrapResult& result : results)
        byKind[{result.trap->pest, result.trap->trapType}].push_back(&result);
    std::vector<RegionResult> regions;
    for (const auto& [kind, traps] : byKind) regions.push_back(regionResult(records, traps, today));
    return regions;
}

} // namespace duskrow::tool
