// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <optional>

#include "domain/base/time.h"
#include "domain/records/programme.h"
#include "domain/rules/reporting_week.h"

namespace duskrow::domain {

// The rhythm of a programme's season.
struct SeasonWeek {
    std::chrono::weekday weekStart = std::chrono::Sunday;
    std::chrono::weekday countDay = std::chrono::Tuesday;
    std::chrono::days grace{0}; // a count so many days before or after the count day belongs to it
    std::optional<std::chrono::weekday> reportDay = {};
    std::optional<std::chrono::minutes> reportTime = {}; // from local midnight of the day of report
};

// Nothing when the season says neither the start of its week nor its count day; a grace or a day of report
// that is not said is none.
std::optional<SeasonWeek> seasonWeekOf(const Season& season);

// The first count day on or after a day.
LocalDay nextCountDay(LocalDay today, const SeasonWeek& week);

// The first count day that a visit (or set-up) of this day leaves open: within the grace before a count day
// it answers that count day.
LocalDay countDayAfter(LocalDay visited, const SeasonWeek& week);

struct ReportDue {
    LocalDay countDay = {}; // of the counts to report
    LocalDay day = {};
    std::optional<std::chrono::minutes> time = {}; // from local midnight
};

// When the next counts are to be in. Nothing without a day of report.
std::optional<ReportDue> reportDue(LocalDay today, const SeasonWeek& week);

} // namespace duskrow::domain
