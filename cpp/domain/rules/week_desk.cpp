// SPDX-License-Identifier: MIT
#include "domain/rules/week_desk.h"

#include <algorithm>
#include <map>

namespace duskrow::domain {

namespace {

bool stood(const TrapOfDesk& trap, const SeasonWeek& rhythm, LocalDay countDay)
{
    if (trap.setDay && countDayAfter(*trap.setDay, rhythm) > countDay) return false;
    return !trap.endDay || *trap.endDay >= countDay;
}

void add(Reported& sum, WeekStanding standing)
{
    ++sum.expected;
    if (standing == WeekStanding::Late) ++sum.late;
    if (standing == WeekStanding::NotCounted) ++sum.notCounted;
    if (standing == WeekStanding::Counted || standing == WeekStanding::NotCounted) ++sum.reported;
}

// The visits of one trap that are for the week.
void take(TrapWeek& of, std::span<const VisitOfDesk> visits, std::size_t first, std::size_t last,
    const SeasonWeek& rhythm, ReportingWeek week)
{
    for (std::size_t i = first; i < last; ++i) {
        const VisitOfDesk& visit = visits[i];
        if (weekCountedFor(visit.day, rhythm.weekStart, rhythm.countDay, rhythm.grace) != week) continue;
        ++of.visits;
        const bool hadCount = of.visit && visits[*of.visit].pest;
        const bool isLater = !of.visit || visits[*of.visit].day <= visit.day;
        if (visit.pest ? !hadCount || isLater : !hadCount && isLater) of.visit = i;
    }
}

} // namespace

ReportingWeek weekToSettle(LocalDay today, const SeasonWeek& rhythm)
{
    const ReportingWeek own = weekOf(today, rhythm.weekStart);
    if (countDayOf(own, rhythm.countDay) <= today) return own;
    return weekOf(own.first - std::chrono::days{1}, rhythm.weekStart);
}

WeekDesk weekDesk(std::span<const TrapOfDesk> traps, std::span<const VisitOfDesk> visits,
    const SeasonWeek& rhythm, ReportingWeek week, LocalDay today)
{
    const LocalDay countDay = countDayOf(week, rhythm.countDay);
    const bool isOver = today > lastCountDay(week, rhythm.countDay, rhythm.grace);
    WeekDesk desk{.week = week, .traps = {}, .districts = {}, .total = {}};
    std::map<Uuid, Reported> districts;
    std::size_t next = 0;
    for (std::size_t i = 0; i < traps.size(); ++i) {
        while (next < visits.size() && visits[next].trap < traps[i].trap) ++next;
        const std::size_t first = next;
        while (next < visits.size() && visits[next].trap == traps[i].trap) ++next;
        TrapWeek of{.trap = i};
        take(of, visits, first, next, rhythm, week);
        if (!of.visit && !stood(traps[i], rhythm, countDay)) continue;
        if (of.visit)
            of.standing = visits[*of.visit].pest ? WeekStanding::Counted : WeekStanding::NotCounted;
        else
            of.standing = isOver ? WeekStanding::Late : WeekStanding::Awaited;
        add(districts[traps[i].district], of.standing);
        add(desk.total, of.standing);
        desk.traps.push_back(of);
    }
    for (const auto& [district, sum] : districts) desk.districts.push_back({district, sum});
    return desk;
}

} // namespace duskrow::domain
