// SPDX-License-Identifier: MIT
#include "domain/rules/due.h"

#include <algorithm>
#include <utility>

#include "domain/rules/catch_intervals.h"
#include "domain/rules/flight_phase.h"
#include "domain/rules/trap_now.h"
#include "domain/rules/upkeep.h"

namespace duskrow::domain {

namespace {

using std::chrono::days;

constexpr Moths fewestForPeak{10}; // common practice, no source

std::int64_t daysFrom(LocalDay from, LocalDay to)
{
    return (to - from).count();
}

bool hasEnded(const Trap& trap, LocalDay today)
{
    if (trap.endDay) return *trap.endDay <= today;
    return trap.endReason.has_value();
}

// A trap that is set up on a later day is nobody's work yet.
bool isYetToCome(const Trap& trap, LocalDay today)
{
    return trap.setDay && *trap.setDay > today;
}

std::optional<DueItem> setUpDue(const Trap& trap, const TrapNow& now, const DueRules& rules, LocalDay today)
{
    std::vector<std::int64_t> open;
    const auto ask = [&](bool isDone, SetUpStep step) {
        if (!isDone) open.push_back(static_cast<std::int64_t>(step));
    };
    ask(trap.setDay.has_value(), SetUpStep::Day);
    ask(trap.place().has_value(), SetUpStep::Place);
    ask(now.lure.since.has_value(), SetUpStep::Lure);
    ask(now.strip.since || !rules.hasStrip, SetUpStep::Strip);
    ask(now.entrance.has_value(), SetUpStep::Entrance);
    if (open.empty()) return std::nullopt;
    const LocalDay day = trap.setDay.value_or(today);
    return DueItem{
        DueWhat::SetUpUnfinished, DueReason::SetUpStepsOpen, day, {}, today > day, std::move(open)};
}

// The last count is the one of the day the traps come down.
std::optional<DueItem> countDue(const TrapNow& now, const DueRules& rules, LocalDay today)
{
    if (!now.lastSeen) return std::nullopt;
    const LocalDay day = countAfter(*now.lastSeen, rules);
    const auto end = takeDownDay(rules);
    if (end && (day > *end || today > rules.takeDownTo.value_or(*end))) return std::nullopt;
    const auto behind = daysFrom(day, today + rules.week.grace);
    std::vector<std::int64_t> numbers{std::max<std::int64_t>(behind / 7, 0)};
    if (now.lastEmptied) numbers.push_back(daysFrom(*now.lastEmptied, std::max(day, today)));
    const bool isOverdue = today > day + rules.week.grace;
    return DueItem{DueWhat::Count, DueReason::WeeklyCount, day, {}, isOverdue, std::move(numbers)};
}

std::optional<DueItem> takeDownDue(const DueRules& rules, LocalDay today)
{
    const auto day = takeDownDay(rules);
    if (!day) return std::nullopt;
    const auto since = std::max<std::int64_t>(daysFrom(*day, today), 0);
    const bool isOverdue = today > rules.takeDownTo.value_or(*day);
    return DueItem{DueWhat::TakeDown, DueReason::SeasonOver, *day, rules.takeDownTo, isOverdue, {since}};
}

// A trap that was lost, moved or replaced leaves nothing to close.
std::optional<DueItem> closingDue(const Trap& trap, const DueRules& rules, LocalDay today)
{
    if (trap.endReason != EndReason::SeasonOver || !trap.endDay) return std::nullopt;
    std::vector<std::int64_t> open;
    const auto ask = [&](bool isDone, TakeDownStep step) {
        if (!isDone) open.push_back(static_cast<std::int64_t>(step));
    };
    ask(trap.lureOut == true, TakeDownStep::LureOut);
    ask(trap.stripOut == true || !rules.hasStrip, TakeDownStep::StripOut);
    ask(trap.washed == true, TakeDownStep::Washed);
    if (open.empty()) return std::nullopt;
    return DueItem{DueWhat::TakeDownUnfinished, DueReason::TakeDownStepsOpen, *trap.endDay, {},
        today > *trap.endDay, std::move(open)};
}

std::optional<DueItem> scoutingDue(
    const TrapFacts& facts, const TrapNow& now, const DueRules& rules, LocalDay today)
{
    if (!rules.scoutingAfterPeak) return std::nullopt;
    const CatchIntervals caught = catchIntervals({facts.trap, now.visits, facts.services, facts.samples});
    const Flight flight = flightOf(caught.steps);
    if (flight.phase != FlightPhase::PastHighest || caught.total < fewestForPeak) return std::nullopt;
    const HighestCatch& highest = *flight.highest;
    const LocalDay from = highest.middle() + *rules.scoutingAfterPeak;
    const LocalDay until = from + rules.scoutingLasts;
    if (today > until) return std::nullopt;
    return DueItem{DueWhat::ScoutingWindow, DueReason::PastPeak, from, until, false,
        {highest.caught.value(), nightsBetween(highest.from, highest.to).value(),
            rules.scoutingAfterPeak->count()}};
}

HeightRule heightRuleOf(const Trap& trap, const DueRules& rules)
{
    return trap.heightRule.value_or(rules.heightRule);
}

} // namespace

LocalDay countAfter(LocalDay visited, const DueRules& rules)
{
    const LocalDay first = countDayAfter(visited, rules.week);
    const auto interval = rules.visitInterval.count();
    if (interval <= 0) return first;
    if (interval < 7) return std::min(first, visited + rules.visitInterval);
    return first + days{7 * ((interval + 3) / 7 - 1)};
}

std::optional<LocalDay> takeDownDay(const DueRules& rules)
{
    if (!rules.takeDownFrom) return std::nullopt;
    const LocalDay day = nextCountDay(*rules.takeDownFrom, rules.week);
    return rules.takeDownTo ? std::min(day, std::max(*rules.takeDownTo, *rules.takeDownFrom)) : day;
}

std::vector<DueItem> dueOf(const TrapFacts& facts, const DueRules& rules, LocalDay today)
{
    std::vector<DueItem> items;
    const auto add = [&](std::optional<DueItem> item) {
        if (item) items.push_back(std::move(*item));
    };
    if (!facts.trap.withdrawn.empty() || isYetToCome(facts.trap, today)) return items;
    const TrapNow now = trapNow(facts, today);
    if (hasEnded(facts.trap, today)) {
        add(closingDue(facts.trap, rules, today));
    } else {
        add(setUpDue(facts.trap, now, rules, today));
        const auto count = countDue(now, rules, today);
        add(count);
        add(lureDue(now, rules, today));
        add(stripDue(now, rules, today));
        const LocalDay nextVisit = count ? count->day : today;
        add(raiseDue(now, rules, heightRuleOf(facts.trap, rules), nextVisit, today));
        add(takeDownDue(rules, today));
    }
    add(scoutingDue(facts, now, rules, today));
    std::stable_sort(
        items.begin(), items.end(), [](const DueItem& a, const DueItem& b) { return a.day < b.day; });
    return items;
}

} // namespace duskrow::domain
