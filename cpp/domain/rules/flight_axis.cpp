// SPDX-License-Identifier: MIT
#include "domain/rules/flight_axis.h"

#include <algorithm>
#include <cmath>

#include "domain/rules/flight_prior.h"

namespace duskrow::domain {

double lastLook(std::span<const TrapFlight> traps, double otherwise)
{
    std::optional<double> last;
    for (const TrapFlight& trap : traps)
        for (const FlightInterval& interval : trap) last = std::max(last.value_or(interval.to), interval.to);
    return last.value_or(otherwise);
}

bool reachesOver(const HeatCourse& course, const FlightPrior& prior, std::chrono::year year)
{
    if (course.points.empty()) return false;
    const double end = prior.centre + 2 * prior.centreSpread + 2 * std::exp(prior.logWidth);
    return course.points.back().day >= dayAt(year, end);
}

Result<FlightPosterior> flightOnHeat(std::span<const TrapInWarmth> traps, const FlightPrior& prior,
    const HeatCourse& courseOfPrior, std::chrono::year year, LocalDay today)
{
    std::vector<TrapFlight> warm;
    for (const TrapInWarmth& one : traps) warm.push_back(onHeat(one.trap, *one.course, year));
    return flightPosterior(
        warm, lastLook(warm, courseOfPrior.totalBy(today)), onHeat(prior, courseOfPrior, year));
}

} // namespace duskrow::domain
