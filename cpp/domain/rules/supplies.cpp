// SPDX-License-Identifier: MIT
#include "domain/rules/supplies.h"

namespace duskrow::domain {

SupplyRules supplyRulesOf(const Protocol& protocol, std::string_view trapType)
{
    SupplyRules rules;
    if (protocol.lure) {
        rules.luresAtOnce = protocol.lure->perTrap.value;
        rules.lureLife = protocol.lure->life.to;
    }
    const TrapType* type = protocol.trapType(trapType);
    rules.hasStrip = protocol.killingStrip.has_value() && (!type || type->hasKillingStrip);
    if (rules.hasStrip) rules.stripLife = protocol.killingStrip->life.to;
    if (protocol.season.weeks.value) rules.season = *protocol.season.weeks.value;
    return rules;
}

std::optional<int> timesPutIn(std::optional<std::chrono::days> life, std::optional<std::chrono::days> season)
{
    if (!life || !season || life->count() <= 0 || season->count() <= 0) return std::nullopt;
    return static_cast<int>((season->count() + life->count() - 1) / life->count());
}

Supplies suppliesFor(std::int64_t traps, const SupplyRules& rules)
{
    Supplies supplies;
    if (const auto times = timesPutIn(rules.lureLife, rules.season); times && rules.luresAtOnce)
        supplies.lures = traps * *rules.luresAtOnce * *times;
    if (const auto times = timesPutIn(rules.stripLife, rules.season); times && rules.hasStrip)
        supplies.strips = traps * *times;
    return supplies;
}

} // namespace duskrow::domain
