// SPDX-License-Identifier: MIT
#include "tool/trap_results.h"

#include "domain/rules/bands.h"
#include "domain/rules/protocol_rules.h"
#include "tool/arguments.h"

namespace duskrow::tool {

using namespace duskrow::domain;

Result<const Protocol*> ProtocolShelf::of(const std::string& pest)
{
    auto& held = m_held[pest];
    if (!held) {
        auto protocol = protocolOf(pest, m_folder);
        if (!protocol) return protocol.error();
        held = std::make_unique<Protocol>(std::move(*protocol));
    }
    return static_cast<const Protocol*>(held.get());
}

Result<TrapResult> trapResult(
    const TrapFacts& facts, const Season& season, LocalDay today, ProtocolShelf& shelf)
{
    const auto protocol = shelf.of(facts.trap.pest);
    if (!protocol) return protocol.error();
    const auto weekStart = isoWeekday(season.weekStart.value_or(7));
    if (!weekStart) return weekStart.error();
    TrapResult result;
    result.trap = &facts.trap;
    result.protocol = *protocol;
    const std::chrono::year year{season.year.value_or(yearOf(today))};
    result.rules = seasonRulesOf(**protocol, year, *weekStart, today);
    result.season = trapSeason(facts, result.rules);
    if (!result.season.takesBand()) return result;
    if (const auto bands = bandsFor(**protocol, facts.trap.trapType))
        result.band = &bandOf(*bands, result.season.total);
    return result;
}

Result<std::vector<TrapResult>> trapResults(
    const SeasonRecords& records, LocalDay today, ProtocolShelf& shelf)
{
    std::vector<TrapResult> results;
    results.reserve(records.traps.size());
    for (const Trap& trap : records.traps) {
        auto result = trapResult(records.facts(trap), records.season, today, shelf);
        if (!result) return result.error();
        results.push_back(std::move(*result));
    }
    return results;
}

} // namespace duskrow::tool
