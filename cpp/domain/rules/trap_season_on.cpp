// SPDX-License-Identifier: MIT
#include "domain/rules/trap_season_on.h"

#include <algorithm>

namespace duskrow::domain {

namespace {

std::span<const Visit> upTo(std::span<const Visit> visits, LocalDay last)
{
    const auto end =
        std::ranges::find_if(visits, [last](const Visit& visit) { return visit.day && *visit.day > last; });
    return visits.first(static_cast<std::size_t>(end - visits.begin()));
}

} // namespace

TrapSeason trapSeasonOn(const TrapFacts& facts, const SeasonRules& rules, LocalDay day)
{
    SeasonRules then = rules;
    then.today = day;
    const auto visits = upTo(facts.visits, day);
    if (!facts.trap.endDay || *facts.trap.endDay <= day)
        return trapSeason({facts.trap, visits, facts.services, facts.samples, facts.leftOut}, then);
    Trap trap = facts.trap;
    trap.endDay.reset();
    trap.endReason.reset();
    return trapSeason({trap, visits, facts.services, facts.samples, facts.leftOut}, then);
}

} // namespace duskrow::domain
