// SPDX-License-Identifier: MIT
#include "domain/rules/trap_season.h"

#include <algorithm>
#include <span>
#include <utility>

#include "domain/rules/interval_spread.h"
#include "domain/rules/rates.h"

namespace duskrow::domain {

namespace {

// A week while its shares are gathered.
struct WeekSum {
    WeekCatch out = {};
    double workingMoths = 0.0; // of the nights on which the trap worked
    Nights workingNights = {};
};

class Weeks {
public:
    Weeks(LocalDay first, LocalDay last, std::chrono::weekday start) : m_start(start)
    {
        for (const ReportingWeek& week : weeksBetween(first, last, start))
            m_weeks.push_back({{.week = week}});
    }

    void add(const CatchStep& step)
    {
        // Without a day of set-up the moths are of the nights up to the count: they are shown in its week.
        const CatchInterval nights{step.from.value_or(step.to), step.to, step.caught.value_or(Moths{})};
        for (const WeekShare& share : spreadOverWeeks(nights, m_start)) {
            WeekSum* sum = find(share.week.first);
            if (sum) addShare(*sum, step, share);
        }
    }

    std::vector<WeekCatch> finish()
    {
        std::vector<WeekCatch> weeks;
        for (WeekSum& sum : m_weeks) {
            sum.out.rate = workingRate(sum);
            weeks.push_back(sum.out);
        }
        return weeks;
    }

private:
    static void addShare(WeekSum& sum, const CatchStep& step, const WeekShare& share)
    {
        sum.out.isAtLeast = sum.out.isAtLeast || step.isAtLeast;
        sum.out.isProvisional = sum.out.isProvisional || step.isProvisional;
        if (!step.caught) return;
        sum.out.moths = sum.out.moths.value_or(0.0) + share.moths;
        sum.out.nights += share.nights;
        sum.out.isDerived = sum.out.isDerived || share.isDerived || !step.from;
        if (step.isAtLeast || share.nights.value() == 0) return;
        sum.workingMoths += share.moths;
        sum.workingNights += share.nights;
    }

    static std::optional<MothsPerNight> workingRate(const WeekSum& sum)
    {
        if (sum.workingNights.value() == 0) return std::nullopt;
        return MothsPerNight{sum.workingMoths / static_cast<double>(sum.workingNights.value())};
    }

    WeekSum* find(LocalDay first)
    {
        if (m_weeks.empty() || first < m_weeks.front().out.week.first) return nullptr;
        const auto index = static_cast<std::size_t>((first - m_weeks.front().out.week.first).count() / 7);
        return index < m_weeks.size() ? &m_weeks[index] : nullptr;
    }

    std::chrono::weekday m_start;
    std::vector<WeekSum> m_weeks;
};

std::vector<WeekCatch> weeksOf(std::span<const CatchStep> steps, std::chrono::weekday start)
{
    if (steps.empty()) return {};
    LocalDay first = steps.front().to;
    LocalDay last = steps.front().to;
    for (const CatchStep& step : steps) {
        first = std::min({first, step.to, step.from.value_or(step.to)});
        last = std::max(last, step.to);
    }
    Weeks weeks(first, last, start);
    for (const CatchStep& step : steps) weeks.add(step);
    std::vector<WeekCatch> found = weeks.finish();
    // A count on the first day of a week tells nothing of that week's nights.
    const WeekCatch& end = found.back();
    if (!end.moths && !end.isAtLeast) found.pop_back();
    return found;
}

bool isOver(const Trap& trap, const SeasonRules& rules)
{
    return trap.endDay || trap.endReason || (rules.lastDay && rules.today > *rules.lastDay);
}

PartReasons partReasons(const Trap& trap, std::optional<LocalDay> countedUntil, const SeasonRules& rules)
{
    PartReasons reasons;
    reasons.cameLate = trap.setDay && rules.latestSetUp && *trap.setDay > *rules.latestSetUp;
    if (!rules.earliestTakeDown || !isOver(trap, rules)) return reasons;
    reasons.endedEarly = trap.endDay && *trap.endDay < *rules.earliestTakeDown;
    reasons.notCountedToEnd =
        !reasons.endedEarly && (!countedUntil || *countedUntil < *rules.earliestTakeDown);
    return reasons;
}

SeasonStanding standingOf(const Trap& trap, const PartReasons& part, const SeasonRules& rules)
{
    if (part.any()) return SeasonStanding::PartOfFlight;
    if (!trap.setDay || !rules.latestSetUp || !rules.earliestTakeDown) return SeasonStanding::NotKnown;
    return isOver(trap, rules) ? SeasonStanding::Whole : SeasonStanding::SoFar;
}

// A trap that was lost took with it what it caught after its last count.
bool wasLostWithCatch(const Trap& trap, std::optional<LocalDay> countedUntil)
{
    if (trap.endReason != EndReason::Lost) return false;
    return !trap.endDay || !countedUntil || *countedUntil < *trap.endDay;
}

std::vector<LocalDay> movesOf(std::span<const Service> services)
{
    std::vector<LocalDay> days;
    for (const Service& service : services)
        if (service.what == ServiceWhat::Move && service.day && service.withdrawn.empty())
            days.push_back(*service.day);
    std::sort(days.begin(), days.end());
    return days;
}

void takeFlags(TrapSeason& season)
{
    for (const CaughtInterval& interval : season.intervals) {
        season.isAtLeast = season.isAtLeast || interval.isAtLeast;
        season.isProvisional = season.isProvisional || interval.isProvisional;
    }
    for (const VisitCatch& visit : season.visits) {
        season.isCorrected = season.isCorrected || visit.isCorrected();
        season.waiting += visit.waiting;
    }
}

TrapTotal totalOf(const TrapSeason& season)
{
    return {season.trap, season.total, season.isMinimum(), season.isProvisional, season.standing};
}

} // namespace

TrapSeason trapSeason(const TrapFacts& facts, const SeasonRules& rules)
{
    const Trap& trap = facts.trap;
    CatchIntervals caught = catchIntervals(facts);
    TrapSeason season;
    season.trap = trap.id;
    season.weeks = weeksOf(caught.steps, rules.weekStart);
    season.flight = flightOf(caught.steps);
    season.visits = std::move(caught.visits);
    season.intervals = std::move(caught.intervals);
    season.steps = std::move(caught.steps);
    season.questions = std::move(caught.questions);
    season.moves = movesOf(facts.services);
    season.total = caught.total;
    season.range = caught.range;
    season.countedUntil = caught.countedUntil;
    season.isAtLeast = wasLostWithCatch(trap, caught.countedUntil);
    takeFlags(season);
    season.part = partReasons(trap, caught.countedUntil, rules);
    season.standing = standingOf(trap, season.part, rules);
    return season;
}

std::optional<std::array<TrapTotal, 2>> pairView(const SeasonOfTrap& one, const SeasonOfTrap& other)
{
    const bool isPair = one.trap.pairedWith == other.trap.id || other.trap.pairedWith == one.trap.id;
    if (!isPair || one.trap.id == other.trap.id) return std::nullopt;
    return std::array{totalOf(one.season), totalOf(other.season)};
}

} // namespace duskrow::domain
