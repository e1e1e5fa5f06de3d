// SPDX-License-Identifier: MIT
#include "store/season_years.h"

#include <algorithm>

#include "domain/rules/bands.h"
#include "domain/rules/protocol_rules.h"
#include "domain/rules/trap_season_on.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

bool isOf(const Trap& trap, const TrapKind& kind)
{
    return trap.pest == kind.pest && trap.trapType == kind.trapType;
}

std::span<const Band> bandsOf(const Protocol& protocol, const TrapKind& kind)
{
    const auto bands = bandsFor(protocol, kind.trapType);
    return bands ? *bands : std::span<const Band>{};
}

SeasonRules rulesOf(const Season& season, const Protocol& protocol, LocalDay day)
{
    const SeasonWeek rhythm = seasonWeekOf(season).value_or(SeasonWeek{});
    const std::chrono::year year{season.year.value_or(yearOf(day))};
    return seasonRulesOf(protocol, year, rhythm.weekStart, day);
}

std::optional<std::size_t> levelOf(std::span<const Band> bands, const TrapSeason& season)
{
    if (bands.empty() || !season.countedUntil) return std::nullopt;
    return static_cast<std::size_t>(&bandOf(bands, season.total) - bands.data());
}

struct Asked {
    const Protocol& protocol;
    const TrapKind& kind;
    std::span<const Band> bands;
    LocalDay today;
};

TrapOfYear trapOfYear(const SeasonRecords& records, const Trap& trap, const TrapSeason& then)
{
    const Site* site = records.siteOf(trap);
    return {site ? site->district : Uuid{}, site ? site->keeper : Uuid{}, then.total,
        then.countedUntil.has_value(), then.isMinimum(), {}};
}

// The season that goes on has no band yet: then those of the catches so far are given, for all of its traps.
RegionYear yearOf(const SeasonRecords& records, const Asked& asked)
{
    const int year = *records.season.year;
    const LocalDay on = sameDayIn(asked.today, year);
    const SeasonRules rules = rulesOf(records.season, asked.protocol, asked.today);
    std::vector<TrapOfYear> traps;
    std::vector<std::optional<std::size_t>> soFar;
    bool hasWhole = false;
    for (const Trap& trap : records.traps) {
        if (!isOf(trap, asked.kind)) continue;
        const TrapFacts facts = records.facts(trap);
        const TrapSeason then = trapSeasonOn(facts, rules, on);
        const TrapSeason whole = trapSeason(facts, rules);
        TrapOfYear of = trapOfYear(records, trap, then);
        if (whole.takesBand()) of.level = levelOf(asked.bands, whole);
        hasWhole = hasWhole || of.level;
        soFar.push_back(levelOf(asked.bands, then));
        traps.push_back(of);
    }
    const bool goesOn = !hasWhole && year == domain::yearOf(asked.today);
    for (std::size_t i = 0; goesOn && i < traps.size(); ++i) traps[i].level = soFar[i];
    RegionYear made = regionYear(year, on, traps, asked.bands.size());
    made.isSoFar = goesOn;
    return made;
}

} // namespace

Result<std::vector<RegionYear>> regionYears(Reader& reader, const Protocol& protocol, const TrapKind& kind,
    LocalDay today, const std::function<bool(int)>& goesOn)
{
    auto known = seasons(reader);
    if (!known) return known.error();
    const Asked asked{protocol, kind, bandsOf(protocol, kind), today};
    std::vector<RegionYear> years;
    for (auto season = known->rbegin(); season != known->rend(); ++season) {
        if (!season->year || *season->year > domain::yearOf(today)) continue;
        if (!goesOn(*season->year)) break;
        const auto records = seasonRecords(reader, *season, VisitsFor::Catch);
        if (!records) return records.error();
        if (std::ranges::any_of(records->traps, [&](const Trap& trap) { return isOf(trap, kind); }))
            years.push_back(yearOf(*records, asked));
    }
    return years;
}

Result<RegionOfSeason> regionOfSeason(
    Reader& reader, const Season& season, const Protocol& protocol, const TrapKind& kind, LocalDay today)
{
    auto records = seasonRecords(reader, season, VisitsFor::Catch);
    if (!records) return records.error();
    RegionOfSeason made;
    made.records = std::move(*records);
    std::erase_if(made.records.traps, [&](const Trap& trap) { return !isOf(trap, kind); });
    const SeasonRules rules = rulesOf(season, protocol, today);
    const std::span<const Band> bands = bandsOf(protocol, kind);
    made.seasons.reserve(made.records.traps.size());
    for (const Trap& trap : made.records.traps)
        made.seasons.push_back(trapSeason(made.records.facts(trap), rules));
    std::vector<RegionMember> members;
    for (std::size_t i = 0; i < made.seasons.size(); ++i) {
        const Trap& trap = made.records.traps[i];
        const Site* site = made.records.siteOf(trap);
        const auto level = made.seasons[i].takesBand() ? levelOf(bands, made.seasons[i]) : std::nullopt;
        members.push_back(
            {&trap, &made.seasons[i], level ? &bands[*level] : nullptr, site ? site->district : Uuid{}, {}});
    }
    made.result = regionResult(members, bands);
    return made;
}

} // namespace duskrow::store
