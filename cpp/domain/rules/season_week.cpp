// SPDX-License-Identifier: MIT
#include "domain/rules/season_week.h"

#include <algorithm>

namespace duskrow::domain {

namespace {

using std::chrono::days;
using std::chrono::weekday;

std::optional<weekday> weekdayOf(std::optional<int> number)
{
    if (!number) return std::nullopt;
    const auto found = isoWeekday(*number);
    return found ? std::optional(*found) : std::nullopt;
}

LocalDay firstFrom(LocalDay day, weekday wanted)
{
    return day + (wanted - weekday{day});
}

} // namespace

std::optional<SeasonWeek> seasonWeekOf(const Season& season)
{
    const auto start = weekdayOf(season.weekStart);
    const auto countDay = weekdayOf(season.countDay);
    if (!start || !countDay) return std::nullopt;
    SeasonWeek week{.weekStart = *start, .countDay = *countDay};
    week.grace = days{std::clamp(season.graceDays.value_or(0), 0, 6)};
    week.reportDay = weekdayOf(season.reportDay);
    if (season.reportMinute) week.reportTime = std::chrono::minutes{*season.reportMinute};
    return week;
}

LocalDay nextCountDay(LocalDay today, const SeasonWeek& week)
{
    return firstFrom(today, week.countDay);
}

LocalDay countDayAfter(LocalDay visited, const SeasonWeek& week)
{
    return firstFrom(visited + week.grace + days{1}, week.countDay);
}

std::optional<ReportDue> reportDue(LocalDay today, const SeasonWeek& week)
{
    if (!week.reportDay) return std::nullopt;
    const LocalDay report = firstFrom(today, *week.reportDay);
    const LocalDay countDay = report - (weekday{report} - week.countDay);
    return ReportDue{countDay, report, week.reportTime};
}

} // namespace duskrow::domain
