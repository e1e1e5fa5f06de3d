// SPDX-License-Identifier: MIT
#include "domain/rules/flight_prior.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace duskrow::domain {

using std::chrono::days;

namespace {

constexpr double leastSpread = 3.0; // days
constexpr double leastWidthSpread = 0.15; // of the logarithm
constexpr std::int64_t fewestMoths = 10;

LocalDay newYear(std::chrono::year year)
{
    return LocalDay{year / std::chrono::January / 1};
}

// The day of the year by which a part of a past season's catch was in; between two counts in a straight line.
double dayOfPart(const PastTrapSeason& past, double part)
{
    const double wanted = part * static_cast<double>(past.points.back().soFar.value());
    for (std::size_t i = 1; i < past.points.size(); ++i) {
        const auto before = static_cast<double>(past.points[i - 1].soFar.value());
        const auto after = static_cast<double>(past.points[i].soFar.value());
        if (after < wanted || after <= before) continue;
        const double share = std::clamp((wanted - before) / (after - before), 0.0, 1.0);
        const double from = dayNumber(past.points[i - 1].day), to = dayNumber(past.points[i].day);
        return from + share * (to - from);
    }
    return dayNumber(past.points.back().day);
}

struct YearOfFlights {
    double middles = 0.0;
    double logWidths = 0.0;
    double traps = 0.0;
};

double onAxis(const HeatCourse& course, std::chrono::year year, double number)
{
    const double whole = std::floor(number);
    const LocalDay day = newYear(year) + days{static_cast<int>(whole) - 1};
    const double before = course.totalBy(day);
    return before + (number - whole) * (course.totalBy(day + days{1}) - before);
}

} // namespace

double dayNumber(LocalDay day)
{
    return static_cast<double>((day - newYear(std::chrono::year{yearOf(day)})).count() + 1);
}

LocalDay dayAt(std::chrono::year year, double number)
{
    const double within = std::clamp(std::round(number), -400.0, 800.0);
    return newYear(year) + days{static_cast<int>(within) - 1};
}

std::optional<FlightPrior> priorOf(const FlightModel& model, std::chrono::year year)
{
    const bool isWhole = model.median.value && model.medianSpreadDays.value && model.widthDays.value
        && model.widthLogSpread.value && model.dispersion.value && model.dispersionLogSpread.value;
    if (!isWhole) return std::nullopt;
    return FlightPrior{dayNumber(LocalDay{year / *model.median.value}), *model.medianSpreadDays.value,
        std::log(*model.widthDays.value), *model.widthLogSpread.value, std::log(*model.dispersion.value),
        *model.dispersionLogSpread.value};
}

PriorOfPast withPast(const FlightPrior& prior, std::span<const PastTrapSeason> past)
{
    std::map<int, YearOfFlights> years;
    for (const PastTrapSeason& season : past) {
        if (season.points.size() < 3 || season.points.back().soFar < Moths{fewestMoths}) continue;
        YearOfFlights& year = years[yearOf(season.points.back().day)];
        // In a normal flight the middle 68 % span two standard deviations.
        const double width = (dayOfPart(season, 0.84) - dayOfPart(season, 0.16)) / 2;
        year.middles += dayOfPart(season, 0.5);
        year.logWidths += std::log(std::max(width, 1.0));
        year.traps += 1;
    }
    PriorOfPast result{prior, years.size()};
    if (years.empty()) return result;
    const double all = static_cast<double>(years.size()) + 1.0;
    double middle = prior.centre / all, logWidth = prior.logWidth / all;
    for (const auto& [number, year] : years) {
        middle += year.middles / year.traps / all;
        logWidth += year.logWidths / year.traps / all;
    }
    const auto squared = [](double value) { return value * value; };
    double spread = squared(prior.centreSpread), widthSpread = squared(prior.logWidthSpread);
    for (const auto& [number, year] : years) {
        spread += squared(year.middles / year.traps - middle);
        widthSpread += squared(year.logWidths / year.traps - logWidth);
    }
    result.prior.centre = middle;
    result.prior.logWidth = logWidth;
    result.prior.centreSpread = std::max(leastSpread, std::sqrt(spread / all));
    result.prior.logWidthSpread = std::max(leastWidthSpread, std::sqrt(widthSpread / all));
    return result;
}

FlightPrior onHeat(const FlightPrior& prior, const HeatCourse& course, std::chrono::year year)
{
    const auto at = [&](double number) { return onAxis(course, year, number); };
    FlightPrior warm = prior;
    const double width = std::exp(prior.logWidth);
    warm.centre = at(prior.centre);
    warm.centreSpread =
        std::max(1.0, (at(prior.centre + prior.centreSpread) - at(prior.centre - prior.centreSpread)) / 2);
    warm.logWidth = std::log(std::max(1.0, (at(prior.centre + width) - at(prior.centre - width)) / 2));
    return warm;
}

TrapFlight flightOf(const TrapSeason& season)
{
    TrapFlight trap;
    for (const CatchStep& step : season.steps)
        if (step.from && step.caught && !step.isAtLeast && step.to > *step.from)
            trap.push_back({dayNumber(*step.from), dayNumber(step.to), step.caught->value()});
    return trap;
}

TrapFlight onHeat(const TrapFlight& trap, const HeatCourse& course, std::chrono::year year)
{
    TrapFlight warm;
    for (const FlightInterval& interval : trap) {
        const double from = onAxis(course, year, interval.from), to = onAxis(course, year, interval.to);
        if (to > from)
            warm.push_back({from, to, interval.moths}); // on days without warmth nothing can be told
    }
    return warm;
}

} // namespace duskrow::domain
