// SPDX-License-Identifier: MIT
#include <array>
#include <cmath>
#include <cstdio>
#include <random>

#include "domain/rules/flight_posterior.h"

// How often the 90 % ranges of a flight hold the truth, by 200 invented seasons: one trap of about 300 moths
// with counts of dispersion 3, and ten traps of the same flight together, looked at when 10, 30, 50 and 80 of
// a hundred are over. The flight's own middle, width and shape are drawn from what the method expects.
//
// Limits: coverage of .81 for the median of one trap and of .82 for the part over, .73 for ten traps, as
// found for this method before with other code in R (60 to 150 seasons a cell); three standard errors of 200
// seasons below them fail.

using namespace duskrow::domain;

namespace {

constexpr int seasons = 200;
constexpr std::array parts{0.1, 0.3, 0.5, 0.8};
constexpr double medianAtLeast = 0.81;
constexpr double partAtLeast = 0.82;
constexpr double pooledAtLeast = 0.73;

double limitOf(double published)
{
    return published - 3.0 * std::sqrt(published * (1.0 - published) / seasons);
}

struct Invented {
    FlightShape shape = FlightShape::Normal;
    double mean = 0.0;
    double width = 0.0;

    [[nodiscard]] double over(double day) const { return partOver(shape, (day - mean) / width); }
    [[nodiscard]] double median() const { return mean + width * medianOf(shape); }
};

TrapFlight trapUntil(const Invented& flight, double until, std::mt19937_64& dice)
{
    constexpr double size = 300.0, dispersion = 3.0, week = 7.0;
    TrapFlight trap;
    for (double from = 150.0; from + week <= until + 1e-9; from += week) {
        const double expected = size * (flight.over(from + week) - flight.over(from));
        std::gamma_distribution<double> luck(dispersion, expected / dispersion);
        const double rate = expected > 1e-9 ? luck(dice) : 0.0;
        trap.push_back(
            {from, from + week, rate > 0 ? std::poisson_distribution<std::int64_t>(rate)(dice) : 0});
    }
    return trap;
}

// The first weekly look at which so much is over.
double lookAt(const Invented& flight, double part)
{
    double day = 157.0;
    while (flight.over(day) < part && day < 330.0) day += 7.0;
    return day;
}

struct Held {
    int median = 0, part = 0;
    double medianWidth = 0.0, partWidth = 0.0;
};

Held run(std::size_t traps, double part, std::mt19937_64& dice)
{
    const FlightPrior prior{190, 10, std::log(10.0), 0.35, std::log(5.0), 0.7};
    std::normal_distribution<double> normal;
    std::uniform_int_distribution<std::size_t> any(0, flightShapes.size() - 1);
    Held held;
    for (int season = 0; season < seasons; ++season) {
        const Invented flight{flightShapes[any(dice)], prior.centre + prior.centreSpread * normal(dice),
            std::exp(prior.logWidth + prior.logWidthSpread * normal(dice))};
        const double until = lookAt(flight, part);
        std::vector<TrapFlight> all;
        for (std::size_t i = 0; i < traps; ++i) all.push_back(trapUntil(flight, until, dice));
        const auto posterior = flightPosterior(all, until, prior);
        if (!posterior) return {};
        const auto& median = posterior->median();
        const auto& over = posterior->part();
        const double truth = flight.over(until);
        if (median.low <= flight.median() && flight.median() <= median.high) ++held.median;
        if (over.low <= truth && truth <= over.high) ++held.part;
        held.medianWidth += (median.high - median.low) / seasons;
        held.partWidth += (over.high - over.low) / seasons;
    }
    return held;
}

} // namespace

int main()
{
    bool holds = true;
    std::printf("%6s %8s %22s %22s\n", "traps", "over", "median held (days)", "part held (wide)");
    for (const std::size_t traps : {std::size_t{1}, std::size_t{10}})
        for (std::size_t i = 0; i < parts.size(); ++i) {
            std::mt19937_64 dice(20260700 + 10 * traps + i);
            const Held held = run(traps, parts[i], dice);
            const double median = static_cast<double>(held.median) / seasons;
            const double part = static_cast<double>(held.part) / seasons;
            const bool isHeld = median >= limitOf(traps == 1 ? medianAtLeast : pooledAtLeast)
                && part >= limitOf(traps == 1 ? partAtLeast : pooledAtLeast);
            std::printf("%6zu %7.0f%% %13.3f %8.1f %13.3f %8.2f %s\n", traps, 100 * parts[i], median,
                held.medianWidth, part, held.partWidth, isHeld ? "ok" : "too seldom");
            holds = holds && isHeld;
        }
    return holds ? 0 : 1;
}
