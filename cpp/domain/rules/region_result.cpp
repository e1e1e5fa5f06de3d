// SPDX-License-Identifier: MIT
#include "domain/rules/region_result.h"

#include <algorithm>
#include <map>

namespace duskrow::domain {

namespace {

DistrictSeason districtSeason(
    const Uuid& district, std::span<const RegionMember* const> traps, std::span<const Band> bands)
{
    std::vector<RegionTrap> of;
    of.reserve(traps.size());
    for (const RegionMember* trap : traps) of.push_back({trap->season, trap->band});
    DistrictSeason made{district, regionSeason(of, bands), {}, nullptr};
    for (const RegionMember* trap : traps) made.traps.push_back(trap->trap);
    if (made.season.highest) made.highest = traps[*made.season.highest]->trap;
    return made;
}

} // namespace

RegionResult regionResult(std::span<const RegionMember> traps, std::span<const Band> bands)
{
    std::vector<const RegionMember*> all;
    std::vector<Uuid> order;
    std::map<Uuid, std::vector<const RegionMember*>> byDistrict;
    all.reserve(traps.size());
    for (const RegionMember& trap : traps) {
        all.push_back(&trap);
        auto& those = byDistrict[trap.district];
        if (those.empty()) order.push_back(trap.district);
        those.push_back(&trap);
    }
    RegionResult result{districtSeason({}, all, bands), {}};
    result.districts.reserve(order.size());
    for (const Uuid& district : order)
        result.districts.push_back(districtSeason(district, byDistrict[district], bands));
    return result;
}

SurfaceOfRegion surfaceOfRegion(std::span<const RegionMember> traps, std::span<const Band> bands,
    std::size_t most, const std::optional<RegionalPlane>& plane)
{
    SurfaceOfRegion made;
    made.isSoFar =
        std::ranges::none_of(traps, [](const RegionMember& trap) { return trap.season->takesBand(); });
    std::vector<GeoPoint> places;
    std::vector<Moths> totals;
    for (const RegionMember& trap : traps) {
        const bool isWhole = trap.season->countedUntil && !trap.season->isMinimum();
        if (!isWhole || !trap.place || (!made.isSoFar && !trap.season->takesBand())) continue;
        places.push_back(*trap.place);
        totals.push_back(trap.season->total);
    }
    for (const Band& band : bands)
        if (band.from > Moths{0}) made.edges.push_back(band.from);
    made.where = plane ? gridOn(*plane, places, most) : gridAround(places, most);
    std::vector<SurfaceTrap> points;
    for (std::size_t i = 0; i < places.size(); ++i)
        points.push_back({made.where->plane.offsetOf(places[i]), totals[i]});
    made.surface = regionalSurface(points, made.where ? made.where->grid : SurfaceGrid{}, made.edges);
    return made;
}

} // namespace duskrow::domain
