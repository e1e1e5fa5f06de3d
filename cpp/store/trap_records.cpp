// SPDX-License-Identifier: MIT
#include "store/trap_records.h"

#include <algorithm>
#include <map>

#include "domain/base/take.h"
#include "domain/rules/protocol_rules.h"
#include "domain/rules/reporting_week.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

std::optional<Error> fill(Reader& reader, TrapRecords& records)
{
    const Uuid& trap = records.trap.id;
    if (auto error = take(visitsOf(reader, trap, true), records.visits)) return error;
    if (auto error = take(servicesOf(reader, trap), records.services)) return error;
    if (auto error = take(samplesOf(reader, trap), records.samples)) return error;
    if (auto error = take(loansOf(reader, trap), records.loans)) return error;
    if (auto error = take(leftOut(reader), records.leftOut)) return error;
    auto found = site(reader, records.trap.site);
    if (!found) return found.error();
    if (*found) records.site = std::move(**found);
    auto known = seasons(reader);
    if (!known) return known.error();
    for (Season& season : *known)
        if (season.id == records.trap.season) records.season = std::move(season);
    return std::nullopt;
}

template <typename R>
std::map<Uuid, std::vector<R>> byTrap(std::vector<R> records)
{
    std::map<Uuid, std::vector<R>> sorted;
    for (R& record : records) sorted[record.trap].push_back(std::move(record));
    return sorted;
}

std::chrono::weekday weekStartOf(const Season& season)
{
    const auto start = isoWeekday(season.weekStart.value_or(1));
    return start ? *start : std::chrono::Monday;
}

struct Wanted {
    const Protocol& protocol;
    const std::string& trapType;
    LocalDay today;
};

std::optional<Error> addSeason(
    Reader& reader, const Season& season, const Wanted& wanted, std::vector<PastTrapSeason>& past)
{
    std::vector<Trap> traps;
    std::vector<Visit> visits;
    std::vector<Sample> samples;
    std::vector<Uuid> apart;
    if (auto error = take(leftOut(reader), apart)) return error;
    if (auto error = take(trapsOf(reader, season.id), traps)) return error;
    if (auto error = take(visitsForCatch(reader, season.id), visits)) return error;
    if (auto error = take(samplesOfSeason(reader, season.id), samples)) return error;
    const auto visitsByTrap = byTrap(std::move(visits));
    const auto samplesByTrap = byTrap(std::move(samples));
    const SeasonRules rules =
        seasonRulesOf(wanted.protocol, std::chrono::year{*season.year}, weekStartOf(season), wanted.today);
    for (const Trap& trap : traps) {
        const auto own = visitsByTrap.find(trap.id);
        if (own == visitsByTrap.end()) continue;
        if (trap.pest != wanted.protocol.id || trap.trapType != wanted.trapType) continue;
        const auto named = samplesByTrap.find(trap.id);
        TrapFacts facts{.trap = trap, .visits = own->second, .leftOut = apart};
        if (named != samplesByTrap.end()) facts.samples = named->second;
        if (auto learned = pastSeasonOf(trap, trapSeason(facts, rules))) past.push_back(std::move(*learned));
    }
    return std::nullopt;
}

} // namespace

Result<std::optional<TrapRecords>> trapRecords(Reader& reader, const Uuid& id)
{
    auto found = trap(reader, id);
    if (!found) return found.error();
    if (!*found) return std::optional<TrapRecords>{};
    TrapRecords records;
    records.trap = std::move(**found);
    if (auto error = fill(reader, records)) return *error;
    return std::optional<TrapRecords>{std::move(records)};
}

Result<std::vector<PastTrapSeason>> pastTrapSeasons(
    Reader& reader, const Protocol& protocol, const std::string& trapType, int year, LocalDay today)
{
    const auto known = seasons(reader);
    if (!known) return known.error();
    std::vector<PastTrapSeason> past;
    for (const Season& season : *known) {
        if (!season.year || *season.year >= year) continue;
        if (auto error = addSeason(reader, season, {protocol, trapType, today}, past)) return *error;
    }
    return past;
}

} // namespace duskrow::store
