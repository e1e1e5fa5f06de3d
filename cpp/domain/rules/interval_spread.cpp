// SPDX-License-Identifier: MIT
#include "domain/rules/interval_spread.h"

#include <algorithm>
#include <cmath>

namespace duskrow::domain {

namespace {

// The grain of the shares: so fine that nobody sees it, so coarse that every sum of shares up to the total is
// a whole number of grains a double holds exactly.
double grainOf(double total)
{
    constexpr int bitsKept = 51;
    return total == 0.0 ? 1.0 : std::ldexp(1.0, std::ilogb(total) - bitsKept);
}

} // namespace

std::vector<WeekShare> spreadOverWeeks(const CatchInterval& interval, std::chrono::weekday weekStart)
{
    const auto total = static_cast<double>(interval.caught.value());
    if (interval.to <= interval.from) return {{weekOf(interval.to, weekStart), Nights{0}, total, false}};

    const LocalDay lastNight = interval.to - std::chrono::days{1};
    const auto weeks = weeksBetween(interval.from, lastNight, weekStart);
    const auto nights = static_cast<double>(nightsBetween(interval.from, interval.to).value());
    const double grain = grainOf(total);
    std::vector<WeekShare> shares;
    double rest = total;
    for (const ReportingWeek& week : weeks) {
        const LocalDay first = std::max(week.first, interval.from);
        const LocalDay beyond = std::min(week.last, lastNight) + std::chrono::days{1};
        const Nights within = nightsBetween(first, beyond);
        const double exact = total * static_cast<double>(within.value()) / nights;
        const double share = week == weeks.back() ? rest : std::round(exact / grain) * grain;
        rest -= share;
        shares.push_back({week, within, share, weeks.size() > 1});
    }
    return shares;
}

} // namespace duskrow::domain
