// SPDX-License-Identifier: MIT
#include "domain/rules/season_outlook.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace duskrow::domain {

namespace {

constexpr std::size_t fewestSeasons = 5;
constexpr Moths fewestMoths{10};
constexpr double leastFraction = 0.02;
constexpr double lowPart = 0.1;
constexpr double highPart = 0.9;
constexpr double rounding = 1e-9; // a whole number but for its division stays that number

// The quantile between order statistics in a straight line (type 7 of Hyndman and Fan 1996, from memory).
//
// values  at least one; reordered
double quantile(std::vector<double>& values, double part)
{
    const double position = part * static_cast<double>(values.size() - 1);
    const auto below = static_cast<std::ptrdiff_t>(position);
    const auto at = values.begin() + below;
    std::nth_element(values.begin(), at, values.end());
    const double low = *at;
    if (at + 1 == values.end()) return low;
    const double high = *std::min_element(at + 1, values.end());
    return low + (position - static_cast<double>(below)) * (high - low);
}

LocalDay sameDayIn(int year, std::chrono::month_day day)
{
    const std::chrono::year_month_day same{std::chrono::year{year}, day.month(), day.day()};
    if (same.ok()) return LocalDay{same};
    return LocalDay{std::chrono::year{year} / day.month() / std::chrono::last}; // 29 February
}

double between(const CatchPoint& before, const CatchPoint& after, LocalDay day)
{
    const auto low = static_cast<double>(before.soFar.value());
    const auto high = static_cast<double>(after.soFar.value());
    const auto part = static_cast<double>((day - before.day).count())
        / static_cast<double>((after.day - before.day).count());
    return low + part * (high - low);
}

double caughtBy(const PastTrapSeason& past, LocalDay day)
{
    const auto& points = past.points;
    const auto after = std::upper_bound(points.begin(), points.end(), day,
        [](LocalDay asked, const CatchPoint& point) { return asked < point.day; });
    if (after == points.begin()) return 0.0;
    const CatchPoint& before = *(after - 1);
    if (after == points.end()) return static_cast<double>(before.soFar.value());
    return between(before, *after, day);
}

} // namespace

std::optional<PastTrapSeason> pastSeasonOf(const Trap& trap, const TrapSeason& season)
{
    if (season.standing != SeasonStanding::Whole || season.isAtLeast || season.isProvisional)
        return std::nullopt;
    PastTrapSeason past{{{*trap.setDay, Moths{}}}};
    Moths soFar;
    for (const CatchStep& step : season.steps) {
        soFar += step.caught.value_or(Moths{});
        // Several counts of one day are one point.
        if (step.to > past.points.back().day)
            past.points.push_back({step.to, soFar});
        else
            past.points.back().soFar = soFar;
    }
    return past;
}

std::optional<double> fractionCaughtBy(const PastTrapSeason& past, std::chrono::month_day day)
{
    if (past.points.empty() || past.points.back().soFar < fewestMoths) return std::nullopt;
    const LocalDay same = sameDayIn(yearOf(past.points.front().day), day);
    return caughtBy(past, same) / static_cast<double>(past.points.back().soFar.value());
}

std::optional<SeasonOutlook> seasonOutlook(Moths soFar, LocalDay day, std::span<const PastTrapSeason> past)
{
    const std::chrono::year_month_day date{day};
    std::vector<double> fractions;
    std::set<int> years;
    for (const PastTrapSeason& season : past) {
        const auto fraction = fractionCaughtBy(season, {date.month() / date.day()});
        if (!fraction) continue;
        fractions.push_back(*fraction);
        years.insert(yearOf(season.points.front().day));
    }
    if (fractions.size() < fewestSeasons) return std::nullopt;

    SeasonOutlook outlook{.seasons = fractions.size(), .years = years.size()};
    outlook.fractionLow = quantile(fractions, lowPart);
    outlook.fractionHigh = quantile(fractions, highPart);
    if (soFar < fewestMoths || outlook.fractionLow <= leastFraction) return outlook;
    const auto caught = static_cast<double>(soFar.value());
    const auto low = static_cast<std::int64_t>(std::floor(caught / outlook.fractionHigh + rounding));
    outlook.totalLow = std::max(soFar, Moths{low});
    outlook.totalHigh = Moths{static_cast<std::int64_t>(std::ceil(caught / outlook.fractionLow - rounding))};
    return outlook;
}

} // namespace duskrow::domain
