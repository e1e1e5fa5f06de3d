// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <vector>

#include "domain/base/result.h"
#include "domain/base/time.h"

namespace duskrow::domain {

// Seven days that a programme reports on together; both days belong to it.
struct ReportingWeek {
    LocalDay first;
    LocalDay last;

    constexpr bool operator==(const ReportingWeek&) const = default;
    [[nodiscard]] constexpr bool holds(LocalDay day) const { return first <= day && day <= last; }
};

// ISO 8601 numbers of weekdays: 1 is Monday, 7 is Sunday.
//
// Errors  OutOfRange for another number
Result<std::chrono::weekday> isoWeekday(int number);

// The week around a day. Every `weekday` below must be ok().
ReportingWeek weekOf(LocalDay day, std::chrono::weekday start);

// Every week that holds a day from `from` to `to`, in order; none when `to` lies before `from`.
std::vector<ReportingWeek> weeksBetween(LocalDay from, LocalDay to, std::chrono::weekday start);

// The day of the week on which traps are counted.
LocalDay countDayOf(ReportingWeek week, std::chrono::weekday countDay);

// The last day on which a count is still in time: the count day and the days of grace.
LocalDay lastCountDay(ReportingWeek week, std::chrono::weekday countDay, std::chrono::days grace);

// The reporting week a count of that day is for: the week before while its days of grace last, else its own.
ReportingWeek weekCountedFor(
    LocalDay day, std::chrono::weekday start, std::chrono::weekday countDay, std::chrono::days grace);

// The day by which counts are to be in: the first such weekday on or after the count day, so it may lie in
// the week that follows.
LocalDay reportBy(ReportingWeek week, std::chrono::weekday countDay, std::chrono::weekday reportDay);

struct IsoWeek {
    int year = 0; // of its Thursday
    int week = 0; // 1 to 53

    constexpr bool operator==(const IsoWeek&) const = default;
};

// Source  ISO 8601: a week runs from Monday and belongs to the year of its Thursday
IsoWeek isoWeekOf(LocalDay day);

// The reporting week that holds the Thursday of an ISO week.
//
// Errors  OutOfRange when the year has no such week, or is not within 1 to 9999
Result<ReportingWeek> weekFromIso(IsoWeek week, std::chrono::weekday start);

} // namespace duskrow::domain
