// SPDX-License-Identifier: MIT
#include "tool/region_results.h"

#include "domain/rules/bands.h"
#include "domain/rules/trap_place.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

constexpr std::size_t mostCells = 100; // along the longer side

using Traps = std::vector<const TrapResult*>;

RegionOfKind regionOf(const SeasonRecords& records, const Traps& traps, LocalDay today)
{
    RegionOfKind region;
    const TrapResult& first = *traps.front();
    region.pest = first.trap->pest;
    region.trapType = first.trap->trapType;
    region.protocol = first.protocol;
    if (const auto bands = bandsFor(*first.protocol, first.trap->trapType)) region.bands = *bands;
    std::vector<RegionMember> members;
    members.reserve(traps.size());
    for (const TrapResult* of : traps) {
        const Site* site = records.siteOf(*of->trap);
        RegionMember member{of->trap, &of->season, of->band, site ? site->district : Uuid{}, {}};
        if (const auto spot = spotOn(records.facts(*of->trap), today)) member.place = spot->place;
        members.push_back(member);
    }
    region.result = regionResult(members, region.bands);
    region.surface = surfaceOfRegion(members, region.bands, mostCells);
    return region;
}

} // namespace

std::vector<RegionOfKind> regionResults(
    const SeasonRecords& records, const std::vector<TrapResult>& results, LocalDay today)
{
    std::map<std::pair<std::string, std::string>, Traps> byKind;
    for (const TrapResult& result : results)
        byKind[{result.trap->pest, result.trap->trapType}].push_back(&result);
    std::vector<RegionOfKind> regions;
    for (const auto& [kind, traps] : byKind) regions.push_back(regionOf(records, traps, today));
    return regions;
}

} // namespace duskrow::tool
