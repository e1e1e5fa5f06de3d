// SPDX-License-Identifier: MIT
#include "domain/bulletin/week_report.h"

#include <algorithm>

#include "domain/rules/trap_place.h"
#include "domain/rules/trap_season_on.h"

namespace duskrow::domain {

namespace {

constexpr Nights mostNights{10};
constexpr double nightsOfAWeek = 7;

struct Counted {
    Moths moths = {};
    Nights nights = {};
    bool isCounted = false;
    bool isInFull = true;
};

Counted countedWithin(const TrapSeason& season, const ReportingWeek& days)
{
    Counted counted;
    for (const CatchStep& step : season.steps) {
        if (!days.holds(step.to)) continue;
        counted.isCounted = counted.isCounted || step.caught.has_value();
        const bool isInFull = step.caught && step.from && !step.isAtLeast && !step.isProvisional
            && nightsBetween(*step.from, step.to) <= mostNights;
        if (!isInFull) {
            counted.isInFull = false;
            continue;
        }
        counted.moths += *step.caught;
        counted.nights += nightsBetween(*step.from, step.to);
    }
    return counted;
}

} // namespace

ReportingWeek countsOf(const ReportingWeek& week, const SeasonWeek& rhythm)
{
    const ReportingWeek before = weekOf(week.first - std::chrono::days{1}, rhythm.weekStart);
    const LocalDay graceBefore = lastCountDay(before, rhythm.countDay, rhythm.grace);
    return {std::max(week.first, graceBefore + std::chrono::days{1}),
        std::max(week.last, lastCountDay(week, rhythm.countDay, rhythm.grace))};
}

WeekReport weekReport(const TrapFacts& facts, const ReportingWeek& week, const SeasonWeek& rhythm,
    const SeasonRules& rules, const Uuid& farm, std::optional<std::size_t> district)
{
    const ReportingWeek days = countsOf(week, rhythm);
    const Trap& trap = facts.trap;
    const TrapSeason season = trapSeasonOn(facts, rules, days.last);
    const Counted counted = countedWithin(season, days);
    WeekReport report;
    report.trap = trap.id;
    report.reporter = {farm, district, std::nullopt};
    if (const auto spot = spotOn(facts, days.last)) {
        report.reporter.cell = cellOf(spot->place);
        report.fix = spot->accuracy ? toMetres(*spot->accuracy) : unknownFix;
    }
    report.isExpected =
        trap.setDay && *trap.setDay < days.last && (!trap.endDay || *trap.endDay >= week.first);
    report.isCounted = counted.isCounted;
    report.soFar = season.total;
    report.phase = season.flight.phase;
    if (counted.isInFull && counted.nights > Nights{0} && !season.isMinimum())
        report.moths = static_cast<double>(counted.moths.value()) * nightsOfAWeek
            / static_cast<double>(counted.nights.value());
    return report;
}

} // namespace duskrow::domain
