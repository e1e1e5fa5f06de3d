// SPDX-License-Identifier: MIT
#include "domain/rules/season_days.h"

namespace duskrow::domain {

std::optional<SeasonDays> seasonDaysOf(const SeasonPlan& plan, std::chrono::year year)
{
    const auto& earliest = plan.startsOnOrAfter.value;
    const auto& weekStarts = plan.weekStarts.value;
    const auto& weeks = plan.weeks.value;
    if (!earliest || !weekStarts || !weeks) return std::nullopt;
    const LocalDay from{year / earliest->month() / earliest->day()};
    const LocalDay first = from + (*weekStarts - std::chrono::weekday{from});
    return SeasonDays{first, first + *weeks - std::chrono::days{1}};
}

} // namespace duskrow::domain
