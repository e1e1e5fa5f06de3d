// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "domain/rules/flight_posterior.h"
#include "domain/rules/heat_course.h"

namespace duskrow::domain {

// The latest end of any interval, else what is handed in.
double lastLook(std::span<const TrapFlight> traps, double otherwise);

// Whether a course of warmth reaches over all of a flight that is expected on the axis of days: two spreads
// and two widths past its middle. Where it ends before, as without past years of the station, nobody knows
// how much warmth is still to come, and the flight has no axis of degree-days.
bool reachesOver(const HeatCourse& course, const FlightPrior& prior, std::chrono::year year);

// One flight on the axis of degree-days, each trap by its own course; traps and prior are handed in on the
// axis of days. The part that is over is asked at the last look.
//
// courses  one for each trap, of the same terms; they outlive the call
// Errors   as flightPosterior
struct TrapInWarmth {
    TrapFlight trap;
    const HeatCourse* course = nullptr;
};
Result<FlightPosterior> flightOnHeat(std::span<const TrapInWarmth> traps, const FlightPrior& prior,
    const HeatCourse& courseOfPrior, std::chrono::year year, LocalDay today);

} // namespace duskrow::domain
