// SPDX-License-Identifier: MIT
#include "domain/rules/reporting_week.h"

#include <string>

namespace duskrow::domain {

namespace {

using std::chrono::days;
using std::chrono::weekday;

LocalDay firstWeekdayFrom(LocalDay day, weekday wanted)
{
    return day + (wanted - weekday{day});
}

LocalDay thursdayOf(IsoWeek week)
{
    // 4 January always lies in week 1.
    return weekOf(dayOf(week.year, 1, 4), std::chrono::Monday).first + days{3 + 7 * (week.week - 1)};
}

} // namespace

Result<weekday> isoWeekday(int number)
{
    if (number < 1 || number > 7) return Error{ErrorCode::OutOfRange, {"weekday", "1", "7"}};
    return weekday{static_cast<unsigned>(number)};
}

ReportingWeek weekOf(LocalDay day, weekday start)
{
    const LocalDay first = day - (weekday{day} - start);
    return {first, first + days{6}};
}

std::vector<ReportingWeek> weeksBetween(LocalDay from, LocalDay to, weekday start)
{
    std::vector<ReportingWeek> weeks;
    if (to < from) return weeks;
    for (ReportingWeek week = weekOf(from, start); week.first <= to;
         week = weekOf(week.last + days{1}, start))
        weeks.push_back(week);
    return weeks;
}

LocalDay countDayOf(ReportingWeek week, weekday countDay)
{
    return firstWeekdayFrom(week.first, countDay);
}

LocalDay lastCountDay(ReportingWeek week, weekday countDay, days grace)
{
    return countDayOf(week, countDay) + grace;
}

ReportingWeek weekCountedFor(LocalDay day, weekday start, weekday countDay, days grace)
{
    const ReportingWeek own = weekOf(day, start);
    const ReportingWeek before = weekOf(own.first - days{1}, start);
    return day <= lastCountDay(before, countDay, grace) ? before : own;
}

LocalDay reportBy(ReportingWeek week, weekday countDay, weekday reportDay)
{
    return firstWeekdayFrom(countDayOf(week, countDay), reportDay);
}

IsoWeek isoWeekOf(LocalDay day)
{
    const LocalDay thursday = weekOf(day, std::chrono::Monday).first + days{3};
    const int year = yearOf(thursday);
    const int dayOfYear = static_cast<int>((thursday - dayOf(year, 1, 1)).count());
    return {year, dayOfYear / 7 + 1};
}

Result<ReportingWeek> weekFromIso(IsoWeek week, weekday start)
{
    if (week.year < 1 || week.year > 9999) return Error{ErrorCode::OutOfRange, {"year", "1", "9999"}};
    // 28 December always lies in the last week.
    const int last = isoWeekOf(dayOf(week.year, 12, 28)).week;
    if (week.week < 1 || week.week > last)
        return Error{ErrorCode::OutOfRange, {"week", "1", std::to_string(last)}};
    return weekOf(thursdayOf(week), start);
}

} // namespace duskrow::domain
