// SPDX-License-Identifier: MIT
#include "domain/rules/flight_phase.h"

#include "domain/rules/rates.h"

namespace duskrow::domain {

namespace {

constexpr Nights fewestNights{3};
constexpr double pastBelow = 0.5; // of the highest rate

std::optional<HighestCatch> rated(const CatchStep& step)
{
    if (!step.from || !step.caught || step.isAtLeast) return std::nullopt;
    const Nights nights = nightsBetween(*step.from, step.to);
    if (nights < fewestNights) return std::nullopt;
    return HighestCatch{*step.from, step.to, *step.caught, *ratePerNight(*step.caught, nights)};
}

FlightPhase phaseOf(MothsPerNight last, const std::optional<HighestCatch>& highest)
{
    if (!highest) return FlightPhase::NoneYet;
    if (last >= highest->rate) return FlightPhase::Rising;
    return last.value() < pastBelow * highest->rate.value() ? FlightPhase::PastHighest
                                                            : FlightPhase::NearHighest;
}

} // namespace

Flight flightOf(std::span<const CatchStep> steps)
{
    Flight flight;
    bool hasMoths = false;
    for (const CatchStep& step : steps) {
        hasMoths = hasMoths || (step.caught && step.caught->value() > 0);
        const auto caught = rated(step);
        if (!caught) continue;
        flight.last = caught->rate;
        const bool isHighest = !flight.highest || caught->rate > flight.highest->rate;
        if (caught->caught.value() > 0 && isHighest) flight.highest = caught;
    }
    const bool isTold = flight.highest || !hasMoths;
    if (flight.last && isTold) flight.phase = phaseOf(*flight.last, flight.highest);
    return flight;
}

} // namespace duskrow::domain
