// SPDX-License-Identifier: MIT
#include "store/season_flags.h"

#include <algorithm>
#include <set>

#include "domain/base/take.h"
#include "domain/rules/season_checks.h"
#include "store/season_records.h"
#include "store/segments.h"
#include "store/visit_authors.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

// What a coordinator said stands, as long as nobody changed it since.
Result<std::set<Uuid>> settledVisits(Reader& reader)
{
    const auto said = rulings(reader);
    if (!said) return said.error();
    const auto stale = staleRulings(reader);
    if (!stale) return stale.error();
    std::set<Uuid> settled;
    for (const Ruling& ruling : *said)
        if (ruling.says == Says::Stands) settled.insert(ruling.subject);
    for (const OpenDifference& one : *stale) settled.erase(one.record);
    return settled;
}

} // namespace

Result<std::vector<Flag>> flagsOfSeason(Reader& reader, const Season& season, LocalDay today)
{
    const auto records = seasonRecords(reader, season, VisitsFor::Checks);
    if (!records) return records.error();
    std::vector<Visit> withoutTrap;
    if (season.year)
        if (auto error = take(visitsWithoutTrap(reader, *season.year), withoutTrap)) return *error;
    auto authors = visitAuthors(reader, season.id);
    if (!authors) return authors.error();
    SeasonToCheck toCheck{.withoutTrap = withoutTrap,
        .authors = std::move(*authors),
        .week = seasonWeekOf(season).value_or(SeasonWeek{})};
    toCheck.traps.reserve(records->traps.size());
    for (const Trap& trap : records->traps) toCheck.traps.push_back(records->facts(trap));
    auto settled = settledVisits(reader);
    if (!settled) return settled.error();
    settled->insert(records->leftOut.begin(), records->leftOut.end());
    std::vector<Flag> flags = seasonFlags(toCheck, today);
    std::erase_if(flags, [&](const Flag& flag) { return settled->contains(flag.visit); });
    return flags;
}

} // namespace duskrow::store
