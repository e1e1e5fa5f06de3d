// SPDX-License-Identifier: MIT
#include "domain/rules/protocol_rules.h"

#include <array>
#include <utility>

namespace duskrow::domain {

namespace {

std::optional<LocalDay> inYear(std::optional<std::chrono::month_day> day, std::chrono::year year)
{
    if (!day) return std::nullopt;
    return LocalDay{year / day->month() / day->day()};
}

std::optional<LocalDay> latestSetUp(const SeasonPlan& plan, std::chrono::year year)
{
    auto latest = inYear(plan.setUp.to, year);
    if (latest && plan.firstMothsAfter.from) *latest += *plan.firstMothsAfter.from;
    return latest;
}

bool takesStrip(const Protocol& protocol, std::string_view trapType)
{
    const TrapType* type = protocol.trapType(trapType);
    return type ? type->hasKillingStrip : protocol.killingStrip.has_value();
}

void takeHeights(DueRules& rules, const HeightAdvice& advice)
{
    rules.heightRule = advice.rule.value.value_or(rules.heightRule);
    rules.leastClearance = advice.leastClearance.value.value_or(rules.leastClearance);
    if (advice.stake.from && advice.stake.to) rules.stake = {*advice.stake.from, *advice.stake.to};
}

} // namespace

SeasonRules seasonRulesOf(
    const Protocol& protocol, std::chrono::year year, std::chrono::weekday weekStart, LocalDay today)
{
    const SeasonPlan& plan = protocol.season;
    SeasonRules rules;
    rules.latestSetUp = latestSetUp(plan, year);
    rules.earliestTakeDown = inYear(plan.takeDown.from, year);
    rules.lastDay = inYear(plan.takeDown.to, year);
    rules.weekStart = weekStart;
    rules.today = today;
    return rules;
}

DueRules dueRulesOf(
    const Protocol& protocol, std::string_view trapType, std::chrono::year year, const SeasonWeek& week)
{
    const SeasonPlan& plan = protocol.season;
    DueRules rules;
    rules.week = week;
    rules.visitInterval = plan.visitInterval.value.value_or(rules.visitInterval);
    rules.hasStrip = takesStrip(protocol, trapType);
    if (protocol.lure) rules.lureLife = protocol.lure->life.to;
    if (protocol.killingStrip) rules.stripLife = protocol.killingStrip->life.to;
    if (protocol.height) takeHeights(rules, *protocol.height);
    rules.takeDownFrom = inYear(plan.takeDown.from, year);
    rules.takeDownTo = inYear(plan.takeDown.to, year);
    if (protocol.scouting) rules.scoutingAfterPeak = protocol.scouting->startsAfterPeak.value;
    return rules;
}

std::optional<PlacementKind> placementKindOf(const PlacementAdvice& advice)
{
    constexpr std::array<std::pair<std::string_view, PlacementKind>, 5> kinds{{
        {"field-edge", PlacementKind::FieldEdge},
        {"farmyard", PlacementKind::Farmyard},
        {"strong-light", PlacementKind::StrongLight},
        {"same-species-trap", PlacementKind::SamePestTrap},
        {"other-species-trap", PlacementKind::OtherPestTrap},
    }};
    for (const auto& [id, kind] : kinds)
        if (advice.id == id) return kind;
    return std::nullopt;
}

std::vector<PlacementRule> placementRulesOf(const Protocol& protocol)
{
    std::vector<PlacementRule> rules;
    for (const PlacementAdvice& advice : protocol.placement) {
        const auto kind = placementKindOf(advice);
        if (!kind || !advice.distance.value || advice.relation == PlacementRelation::AwayFrom) continue;
        const bool isAbout = advice.relation == PlacementRelation::About;
        rules.push_back(
            {*kind, isAbout ? PlacementDistance::About : PlacementDistance::Least, *advice.distance.value});
    }
    return rules;
}

} // namespace duskrow::domain
