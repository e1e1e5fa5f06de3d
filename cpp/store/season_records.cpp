// SPDX-License-Identifier: MIT
#include "store/season_records.h"

#include <algorithm>

#include "domain/base/take.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

// SQLite orders ids by their bytes, as Uuid does: what was read "by trap" can be searched.
template <typename R>
std::span<const R> ofTrap(const std::vector<R>& records, const Uuid& trap)
{
    const auto [first, last] = std::ranges::equal_range(records, trap, {}, &R::trap);
    return {first, last};
}

Result<std::vector<Visit>> visitsOfSeason(Reader& reader, const Uuid& season, VisitsFor wanted)
{
    if (wanted == VisitsFor::Due) return visitsForDue(reader, season);
    if (wanted == VisitsFor::Checks) return visitsForChecks(reader, season);
    return visitsForCatch(reader, season);
}

} // namespace

TrapFacts SeasonRecords::facts(const Trap& trap) const
{
    return {trap, ofTrap(visits, trap.id), ofTrap(services, trap.id), ofTrap(samples, trap.id), leftOut};
}

const Site* SeasonRecords::siteOf(const Trap& trap) const
{
    const auto found = std::ranges::lower_bound(sites, trap.site, {}, &Site::id);
    return found != sites.end() && found->id == trap.site ? &*found : nullptr;
}

Result<SeasonRecords> seasonRecords(Reader& reader, const Season& season, VisitsFor wanted)
{
    SeasonRecords records;
    records.season = season;
    if (auto error = take(trapsOf(reader, season.id), records.traps)) return *error;
    if (auto error = take(sitesOf(reader, season.id), records.sites)) return *error;
    std::ranges::sort(records.sites, {}, &Site::id);
    if (wanted == VisitsFor::Nothing) return records;
    if (auto error = take(visitsOfSeason(reader, season.id, wanted), records.visits)) return *error;
    if (auto error = take(servicesOfSeason(reader, season.id), records.services)) return *error;
    if (auto error = take(samplesOfSeason(reader, season.id), records.samples)) return *error;
    if (auto error = take(leftOut(reader), records.leftOut)) return *error;
    return records;
}

} // namespace duskrow::store
