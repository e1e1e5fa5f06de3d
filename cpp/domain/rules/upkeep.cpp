// SPDX-License-Identifier: MIT
#include "domain/rules/upkeep.h"

#include <algorithm>
#include <initializer_list>

namespace duskrow::domain {

namespace {

using std::chrono::days;

std::int64_t daysFrom(LocalDay from, LocalDay to)
{
    return (to - from).count();
}

std::optional<DueItem> soonest(std::initializer_list<std::optional<DueItem>> items)
{
    std::optional<DueItem> first;
    for (const auto& item : items)
        if (item && (!first || item->day < first->day)) first = item;
    return first;
}

// In the days in which traps come down nothing is renewed any more.
std::optional<DueItem> beforeTakeDown(std::optional<DueItem> item, const DueRules& rules, LocalDay today)
{
    const auto& end = rules.takeDownFrom;
    if (item && end && std::max(item->day, today) >= *end) return std::nullopt;
    return item;
}

std::optional<DueItem> foundAt(DueWhat what, DueReason why, std::optional<LocalDay> day, LocalDay today)
{
    if (!day) return std::nullopt;
    return DueItem{what, why, *day, {}, today > *day, {daysFrom(*day, today)}};
}

std::optional<DueItem> grownOld(
    DueWhat what, DueReason why, std::optional<LocalDay> since, std::optional<days> life, LocalDay today)
{
    if (!since || !life) return std::nullopt;
    const LocalDay day = *since + *life;
    return DueItem{what, why, day, {}, today > day, {daysFrom(*since, std::max(day, today)), life->count()}};
}

std::optional<DueItem> expired(std::optional<LocalDay> expiry, LocalDay today)
{
    if (!expiry) return std::nullopt;
    const LocalDay day = *expiry + days{1};
    return DueItem{DueWhat::LureChange, DueReason::LureExpired, day, {}, today > day,
        {daysFrom(*expiry, std::max(day, today))}};
}

std::optional<Millimetres> raiseTo(const TrapNow& now, const DueRules& rules)
{
    const auto suggestion = suggestRaise(*now.entrance, now.canopy.back().canopy, canopyGrowth(now.canopy),
        Nights{rules.visitInterval.count()}, rules.stake);
    if (!suggestion || suggestion->entrance <= *now.entrance) return std::nullopt;
    return suggestion->entrance;
}

DueItem raise(DueReason why, LocalDay day, LocalDay today, std::vector<std::int64_t> numbers,
    std::optional<Millimetres> to)
{
    if (to) numbers.push_back(to->value());
    return {DueWhat::RaiseStake, why, day, {}, today > day, std::move(numbers)};
}

} // namespace

std::optional<DueItem> lureDue(const TrapNow& now, const DueRules& rules, LocalDay today)
{
    const auto gone = foundAt(DueWhat::LureChange, DueReason::LureGone, now.lure.goneSince, today);
    if (gone) return beforeTakeDown(gone, rules, today);
    const auto old = grownOld(DueWhat::LureChange, DueReason::LureOld, now.lure.since, rules.lureLife, today);
    const auto past = now.lure.since ? expired(now.lure.expiry, today) : std::nullopt;
    return beforeTakeDown(soonest({old, past}), rules, today);
}

std::optional<DueItem> stripDue(const TrapNow& now, const DueRules& rules, LocalDay today)
{
    if (!rules.hasStrip) return std::nullopt;
    const auto gone = foundAt(DueWhat::StripChange, DueReason::StripGone, now.strip.goneSince, today);
    const auto spent = foundAt(DueWhat::StripChange, DueReason::MothsAlive, now.strip.spentSince, today);
    if (gone || spent) return beforeTakeDown(gone ? gone : spent, rules, today);
    const auto old =
        grownOld(DueWhat::StripChange, DueReason::StripOld, now.strip.since, rules.stripLife, today);
    return beforeTakeDown(old, rules, today);
}

std::optional<DueItem> raiseDue(
    const TrapNow& now, const DueRules& rules, HeightRule rule, LocalDay nextVisit, LocalDay today)
{
    if (rule == HeightRule::Fixed || now.isFloweringOver || !now.entrance || now.canopy.empty())
        return std::nullopt;
    const CanopyHeight& last = now.canopy.back();
    const Millimetres entrance = *now.entrance;
    const Millimetres canopy = last.canopy;
    const auto to = raiseTo(now, rules);
    if (entrance - canopy <= rules.leastClearance)
        return beforeTakeDown(
            raise(DueReason::CropAtEntrance, last.day, today, {entrance.value(), canopy.value()}, to), rules,
            today);
    const auto reached = dayCropReaches(entrance - rules.leastClearance, now.canopy);
    const LocalDay next = std::max(nextVisit, today);
    if (!reached || *reached > next + rules.visitInterval) return std::nullopt;
    const LocalDay day = std::min(*reached, next);
    return beforeTakeDown(raise(DueReason::CropWillReach, day, today,
                              {entrance.value(), canopy.value(), daysFrom(today, *reached)}, to),
        rules, today);
}

} // namespace duskrow::domain
