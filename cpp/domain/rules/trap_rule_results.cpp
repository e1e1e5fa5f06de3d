// SPDX-License-Identifier: MIT
#include "domain/rules/trap_rule_results.h"

#include <algorithm>
#include <cassert>

namespace duskrow::domain {

namespace {

bool isCounted(const CatchStep& step)
{
    return step.caught && step.from && *step.from <= step.to;
}

// The steps from `first` on that follow on each other without a night between them.
std::span<const CatchStep> unbroken(std::span<const CatchStep> steps, std::size_t first)
{
    std::size_t end = first;
    while (end < steps.size() && isCounted(steps[end])
        && (end == first || *steps[end].from == steps[end - 1].to))
        ++end;
    return steps.subspan(first, end - first);
}

CatchSpan spanOf(std::span<const CatchStep> run)
{
    CatchSpan span{*run.front().from, run.back().to, {}};
    for (const CatchStep& step : run) span.moths += *step.caught;
    return span;
}

// The most moths that some `nights` nights of a count must hold at least: pigeons and holes.
Moths surelyWithin(const CatchSpan& span, Nights nights)
{
    const auto windows =
        std::max<std::int64_t>(1, (span.nights().value() + nights.value() - 1) / nights.value());
    return Moths{(span.moths.value() + windows - 1) / windows};
}

// Whether some `nights` nights can touch every count of a run.
bool canTouchAll(std::span<const CatchStep> run, Nights nights)
{
    if (run.size() == 1) return true;
    return nightsBetween(run.front().to, *run.back().from).value() + 2 <= nights.value();
}

WindowState stateOf(std::span<const CatchStep> run, Moths moths, Nights nights)
{
    const CatchSpan span = spanOf(run);
    if (span.moths < moths) return WindowState::NotReached;
    if (span.nights() <= nights) return WindowState::Reached;
    if (run.size() == 1 && surelyWithin(span, nights) >= moths) return WindowState::ReachedWithin;
    return canTouchAll(run, nights) ? WindowState::CannotTell : WindowState::NotReached;
}

// The counts up to `last` that together cover `per` nights, or as many as follow on each other.
std::optional<RateResult> rateAt(std::span<const CatchStep> steps, std::size_t last, Nights per)
{
    const auto isUsable = [](const CatchStep& step) { return isCounted(step) && !step.isAtLeast; };
    if (!isUsable(steps[last])) return std::nullopt;
    std::size_t first = last;
    while (first > 0 && nightsBetween(*steps[first].from, steps[last].to) < per && isUsable(steps[first - 1])
        && steps[first - 1].to == *steps[first].from)
        --first;
    const CatchSpan span = spanOf(steps.subspan(first, last - first + 1));
    if (span.nights() < Nights{1}) return std::nullopt;
    const auto moths = static_cast<double>(span.moths.value());
    return RateResult{
        span, moths * static_cast<double>(per.value()) / static_cast<double>(span.nights().value())};
}

} // namespace

std::vector<const TrapRule*> trapRulesFor(const Protocol& protocol, std::string_view trapType)
{
    std::vector<const TrapRule*> rules;
    for (const TrapRule& rule : protocol.trapRules) {
        const auto& types = headOf(rule).trapTypes;
        if (std::find(types.begin(), types.end(), trapType) != types.end()) rules.push_back(&rule);
    }
    return rules;
}

const RuleStep& stepOf(std::span<const RuleStep> steps, double value)
{
    assert(!steps.empty() && value >= 0);
    std::size_t at = 0;
    while (at + 1 < steps.size()
        && (steps[at + 1].isOver ? value > steps[at + 1].from : value >= steps[at + 1].from))
        ++at;
    return steps[at];
}

WindowResult mothsInNights(std::span<const CatchStep> steps, Moths moths, Nights nights)
{
    assert(moths >= Moths{1} && nights >= Nights{1});
    WindowResult best;
    const auto isBetter = [&](WindowState state, LocalDay to) {
        if (state == WindowState::NotReached) return false;
        const bool isSure = state >= WindowState::ReachedWithin;
        const bool wasSure = best.state >= WindowState::ReachedWithin;
        return isSure != wasSure ? isSure : !best.span || to < best.span->to;
    };
    for (std::size_t first = 0; first < steps.size(); ++first) {
        const auto row = unbroken(steps, first);
        for (std::size_t count = 1; count <= row.size(); ++count) {
            const auto run = row.first(count);
            if (!canTouchAll(run, nights) && nightsBetween(*run.front().from, run.back().to) > nights) break;
            const WindowState state = stateOf(run, moths, nights);
            if (isBetter(state, run.back().to)) best = {state, spanOf(run)};
        }
    }
    return best;
}

Rates catchRates(std::span<const CatchStep> steps, Nights per)
{
    assert(per >= Nights{1});
    Rates rates;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const auto rate = rateAt(steps, i, per);
        if (!rate) continue;
        rates.last = rate;
        if (!rates.highest || rate->catchPer > rates.highest->catchPer) rates.highest = rate;
    }
    return rates;
}

RunResult visitsInARow(std::span<const CatchStep> steps, Moths moths, int visits, std::optional<Nights> apart)
{
    assert(visits >= 1);
    const auto isOver = [&](std::span<const CatchStep> run) {
        return apart && std::any_of(run.begin(), run.end(), [&](const CatchStep& step) {
            return nightsBetween(*step.from, step.to) > *apart;
        });
    };
    RunResult result;
    std::size_t first = 0;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const bool follows = i > first && isCounted(steps[i]) && *steps[i].from == steps[i - 1].to;
        if (!follows) first = i;
        if (!isCounted(steps[i]) || *steps[i].caught < moths) {
            first = i + 1;
            continue;
        }
        const auto run = steps.subspan(first, i - first + 1);
        if (result.reached || run.size() < static_cast<std::size_t>(visits)) continue;
        result.reached = spanOf(run);
        result.isOverMoreNights = isOver(run);
    }
    result.atEnd = static_cast<int>(steps.size() - std::min(first, steps.size()));
    if (!result.reached) result.isOverMoreNights = isOver(steps.last(static_cast<std::size_t>(result.atEnd)));
    return result;
}

SumUpTo sumUpTo(std::span<const CatchStep> steps, LocalDay day)
{
    SumUpTo sum;
    for (const CatchStep& step : steps) {
        if (!step.caught) continue;
        if (step.to <= day) sum.least += *step.caught;
        if (step.to <= day || (step.from && *step.from < day)) sum.most += *step.caught;
    }
    return sum;
}

HeatReached heatReached(std::span<const HeatStep> steps, DegreeDays sum)
{
    HeatReached reached;
    for (const HeatStep& step : steps) {
        const auto needed = step.inCelsius();
        if (!needed) continue;
        if (*needed <= sum) {
            reached.last = &step;
            continue;
        }
        reached.next = &step;
        reached.toNext = *needed - sum;
        break;
    }
    return reached;
}

} // namespace duskrow::domain
