// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "domain/protocol/heat.h"
#include "domain/rules/flight_posterior.h"
#include "domain/rules/heat_course.h"
#include "domain/rules/season_outlook.h"
#include "domain/rules/trap_season.h"

namespace duskrow::domain {

// The axis of days: 1 is the first of January.
double dayNumber(LocalDay day);
LocalDay dayAt(std::chrono::year year, double number); // the nearest

// What a protocol expects of a flight on the axis of days. Nothing where a figure is missing.
std::optional<FlightPrior> priorOf(const FlightModel& model, std::chrono::year year);

struct PriorOfPast {
    FlightPrior prior;
    std::size_t years = 0; // of past seasons in it
};

// The same after the past seasons of a programme: each year weighs as much as what the protocol said before,
// and the middle of a flight is never taken to be surer than three days. Common practice, no source.
//
// past  whole seasons of ten moths or more
PriorOfPast withPast(const FlightPrior& prior, std::span<const PastTrapSeason> past);

// The same on the axis of degree-days, by a course of warmth that reaches over the flight.
FlightPrior onHeat(const FlightPrior& prior, const HeatCourse& course, std::chrono::year year);

// The intervals in which a trap's moths were counted, on the axis of days. What was lost, is a minimum or has
// no beginning is left out.
TrapFlight flightOf(const TrapSeason& season);
TrapFlight onHeat(const TrapFlight& trap, const HeatCourse& course, std::chrono::year year);

} // namespace duskrow::domain
