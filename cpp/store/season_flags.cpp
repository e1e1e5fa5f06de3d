// SPDX-License-Identifier: MIT
#include "store/season_flags.h"

#include <algorithm>

#include "domain/base/take.h"
#include "domain/rules/season_checks.h"
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
};

std::optional<Error> read(Reader& reader, const Season& season, SeasonRead& records)
{
    if (auto error = take(trapsOf(reader, season.id), records.traps)) return error;
    if (auto error = take(visitsForChecks(reader, season.id), records.visits)) return error;
    if (auto error = take(servicesOfSeason(reader, season.id), records.services)) return error;
    if (auto error = take(samplesOfSeason(reader, season.id), records.samples)) return error;
    if (!season.year) return std::nullopt;
    return take(visitsWithoutTrap(reader, *season.year), records.withoutTrap);
}

template <typename R>
std::span<const R> ofTrap(const std::vector<R>& records, const Uuid& trap)
{
    const auto [first, last] = std::ranges::equal_range(records, trap, {}, &R::trap);
    return {first, last};
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
            ofTrap(records.samples, trap.id)});
    return seasonFlags(toCheck, today);
}

} // namespace duskrow::store
