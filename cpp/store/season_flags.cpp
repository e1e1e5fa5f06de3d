// SPDX-License-Identifier: MIT
#include "store/season_flags.h"

#include <algorithm>
#include <set>

#include "domain/base/take.h"
#include "domain/rules/season_checks.h"
#include "store/segments.h"
#include "store/visit_authors.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

struct SeasonRead {
    std::vector<Trap> traps;
    std::vector<Visit> visits; // these by trap
    std::vector<Service> services;
    std::vector<Sample> samples;
    std::vector<Visit> withoutTrap;
    std::vector<Uuid> leftOut;
};

std::optional<Error> read(Reader& reader, const Season& season, SeasonRead& records)
{
    if (auto error = take(trapsOf(reader, season.id), records.traps)) return error;
    if (auto error = take(visitsForChecks(reader, season.id), records.visits)) return error;
    if (auto error = take(servicesOfSeason(reader, season.id), records.services)) return error;
    if (auto error = take(samplesOfSeason(reader, season.id), records.samples)) return error;
    if (auto error = take(leftOut(reader), records.leftOut)) return error;
    if (!season.year) return std::nullopt;
    return take(visitsWithoutTrap(reader, *season.year), records.withoutTrap);
}

template <typename R>
std::span<const R> ofTrap(const std::vector<R>& records, const Uuid& trap)
{
    const auto [first, last] = std::ranges::equal_range(records, trap, {}, &R::trap);
    return {first, last};
}

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
    SeasonRead records;
    if (auto error = read(reader, season, records)) return *error;
    auto authors = visitAuthors(reader, season.id);
    if (!authors) return authors.error();
    SeasonToCheck toCheck{.withoutTrap = records.withoutTrap,
        .authors = std::move(*authors),
        .week = seasonWeekOf(season).value_or(SeasonWeek{})};
    toCheck.traps.reserve(records.traps.size());
    for (const Trap& trap : records.traps)
        toCheck.traps.push_back({trap, ofTrap(records.visits, trap.id), ofTrap(records.services, trap.id),
            ofTrap(records.samples, trap.id), records.leftOut});
    auto settled = settledVisits(reader);
    if (!settled) return settled.error();
    settled->insert(records.leftOut.begin(), records.leftOut.end());
    std::vector<Flag> flags = seasonFlags(toCheck, today);
    std::erase_if(flags, [&](const Flag& flag) { return settled->contains(flag.visit); });
    return flags;
}

} // namespace duskrow::store
