// SPDX-License-Identifier: MIT
#include "domain/rules/season_checks.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "domain/rules/catch_intervals.h"
#include "domain/rules/digit_heaping.h"
#include "domain/rules/driving_check.h"
#include "domain/rules/regional_residual.h"
#include "domain/rules/reporting_week.h"
#include "domain/rules/trap_checks.h"
#include "domain/rules/trap_place.h"
#include "domain/rules/visit_questions.h"

namespace duskrow::domain {

namespace {

// Counts that may be held against one another: of one pest in one type of trap.
using Series = std::pair<std::string, std::string>;

struct SeriesCounts {
    std::vector<RegionalCount> counts;
    std::vector<const VisitCatch*> catches; // beside them
};

struct CountsOfObserver {
    std::vector<Moths> counts;
    LocalDay last = LocalDay::min();
};

std::int64_t wholeMoths(MothsPerWeek rate)
{
    return std::llround(rate.value());
}

bool isCountedEach(const Visit& visit)
{
    return visit.outcome == Outcome::Counted && visit.pest
        && visit.countMethod.value_or(CountMethod::Each) == CountMethod::Each;
}

class SeasonCheck {
public:
    SeasonCheck(const SeasonToCheck& season, LocalDay today) : m_season(season), m_today(today)
    {
        for (const TrapFacts& facts : season.traps)
            if (!facts.trap.replaces.isNil()) m_successors.emplace(facts.trap.replaces, &facts.trap);
    }

    std::vector<Flag> flags()
    {
        m_catches.reserve(m_season.traps.size()); // looked at from the series
        for (const TrapFacts& facts : m_season.traps) takeTrap(facts);
        for (auto& [series, counts] : m_series) checkRegion(counts);
        addJumps();
        for (auto& [observer, stops] : m_stops) checkDriving(observer, std::move(stops));
        for (const auto& [observer, counted] : m_counted) checkDigits(observer, counted);
        for (const Visit& visit : m_season.withoutTrap) checkWithoutTrap(visit);
        std::sort(m_flags.begin(), m_flags.end(), [](const Flag& a, const Flag& b) {
            return std::tie(b.day, a.trap, a.visit, a.check, a.observer)
                < std::tie(a.day, b.trap, b.visit, b.check, b.observer);
        });
        return std::move(m_flags);
    }

private:
    void takeTrap(const TrapFacts& facts)
    {
        const CatchIntervals& catches = m_catches.emplace_back(catchIntervals(facts));
        for (Flag& flag : trapFlags(facts, catches, m_today))
            (flag.check == Check::FarAboveBefore ? m_jumps : m_flags).push_back(std::move(flag));
        takeCounts(facts, catches);
        const auto successor = m_successors.find(facts.trap.id);
        for (const Visit& visit : facts.visits) {
            if (!visit.withdrawn.empty() || !visit.day) continue;
            if (std::ranges::binary_search(facts.leftOut, visit.id)) continue;
            if (successor != m_successors.end()) checkReplaced(visit, *successor->second);
            takeObserver(facts, visit);
        }
    }

    void takeCounts(const TrapFacts& facts, const CatchIntervals& catches)
    {
        SeriesCounts& series = m_series[{facts.trap.pest, facts.trap.trapType}];
        for (const VisitCatch& caught : catches.visits) {
            const auto spot = spotOn(facts, caught.day);
            if (!caught.rate || !spot) continue;
            const ReportingWeek week = weekCountedFor(
                caught.day, m_season.week.weekStart, m_season.week.countDay, m_season.week.grace);
            series.counts.push_back({facts.trap.id, caught.visit, week.first, spot->place,
                perWeek(*caught.rate), *caught.nights});
            series.catches.push_back(&caught);
        }
    }

    void takeObserver(const TrapFacts& facts, const Visit& visit)
    {
        const Observer observer = observerOf(visit);
        if (!observer.isKnown()) return;
        if (isCountedEach(visit)) {
            CountsOfObserver& counted = m_counted[observer];
            counted.counts.push_back(*visit.pest);
            counted.last = std::max(counted.last, *visit.day);
        }
        const auto spot = spotOn(facts, *visit.day);
        // Without its moment a visit says nothing of driving; typed in for another, it bears that of typing.
        if (spot && visit.atMs && observer.typed.empty() && !visit.reportedHow)
            m_stops[observer].push_back({visit.id, facts.trap.id, *visit.day, momentOf(visit), spot->place});
    }

    [[nodiscard]] Observer observerOf(const Visit& visit) const
    {
        if (!visit.observer.empty()) return {.member = {}, .typed = visit.observer};
        const auto author = m_season.authors.find(visit.id);
        return author == m_season.authors.end() ? Observer{}
                                                : Observer{.member = author->second, .typed = {}};
    }

    void checkReplaced(const Visit& visit, const Trap& successor)
    {
        if (!successor.setDay || *visit.day <= *successor.setDay || !visit.pest) return;
        Flag flag = flagOf(Check::ReplacedTrapCounted, visit);
        flag.numbers = {nightsBetween(*successor.setDay, *visit.day).value()};
        flag.others = {successor.id};
        m_flags.push_back(std::move(flag));
    }

    void checkRegion(const SeriesCounts& series)
    {
        for (RegionalResidual& residual : regionalResiduals(series.counts)) {
            const RegionalCount& count = series.counts[residual.count];
            if (residual.score) m_compared.insert(count.visit);
            if (!residual.isFarAbove() && !residual.isFarBelow()) continue;
            const VisitCatch& caught = *series.catches[residual.count];
            m_flags.push_back(
                Flag{.check = residual.isFarAbove() ? Check::FarAboveAround : Check::FarBelowAround,
                    .visit = count.visit,
                    .trap = count.trap,
                    .day = caught.day,
                    .numbers = {caught.count->value(), caught.nights->value(), wholeMoths(count.rate),
                        wholeMoths(residual.expected)},
                    .around = std::move(residual.around)});
        }
    }

    void addJumps()
    {
        for (Flag& flag : m_jumps)
            if (!m_compared.contains(flag.visit)) m_flags.push_back(std::move(flag));
    }

    void checkDriving(const Observer& observer, std::vector<StopMade> stops)
    {
        for (const HurriedStops& run : hurriedStops(std::move(stops))) {
            std::set<Uuid> traps;
            for (const StopMade& stop : run.stops) traps.insert(stop.trap);
            Flag flag{.check = Check::FasterThanDriving,
                .visit = run.stops.front().visit,
                .trap = run.stops.front().trap,
                .day = run.stops.front().day,
                .observer = observer,
                .numbers = {static_cast<std::int64_t>(traps.size()), run.taken.count(),
                    std::llround(run.way.value()), run.driving.count()}};
            for (const StopMade& stop : run.stops)
                if (stop.visit != flag.visit) flag.others.push_back(stop.visit);
            m_flags.push_back(std::move(flag));
        }
    }

    void checkDigits(const Observer& observer, const CountsOfObserver& counted)
    {
        const DigitHeaping heaping = digitHeapingOf(counted.counts);
        if (!heaping.isHeaped()) return;
        m_flags.push_back(Flag{.check = Check::RoundedCounts,
            .day = counted.last,
            .observer = observer,
            .numbers = {heaping.rounded, heaping.counts}});
    }

    void checkWithoutTrap(const Visit& visit)
    {
        constexpr std::int64_t notCounted = -1;
        Flag flag = flagOf(Check::WithoutTrap, visit);
        flag.numbers = {visit.pest ? visit.pest->value() : notCounted};
        m_flags.push_back(std::move(flag));
    }

    static Flag flagOf(Check check, const Visit& visit)
    {
        return Flag{.check = check, .visit = visit.id, .trap = visit.trap, .day = visit.day};
    }

    const SeasonToCheck& m_season;
    LocalDay m_today;
    std::map<Uuid, const Trap*> m_successors; // by the trap they stand in for
    std::vector<CatchIntervals> m_catches;
    std::map<Series, SeriesCounts> m_series;
    std::map<Observer, std::vector<StopMade>> m_stops;
    std::map<Observer, CountsOfObserver> m_counted;
    std::set<Uuid> m_compared; // visits that were held against the traps around
    std::vector<Flag> m_jumps;
    std::vector<Flag> m_flags;
};

} // namespace

std::vector<Flag> seasonFlags(const SeasonToCheck& season, LocalDay today)
{
    return SeasonCheck(season, today).flags();
}

} // namespace duskrow::domain
