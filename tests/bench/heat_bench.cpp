// SPDX-License-Identifier: MIT
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <random>
#include <sstream>

#include "bench/figures.h"
#include "domain/rules/degree_days.h"
#include "domain/rules/flight_posterior.h"

// Degree-days of 30 stations over 30 years, and the flight of one trap, against their limits.
//   heat_bench [FILE]   writes the temperatures to FILE as tmin,tmax a line, for another program to sum

using namespace duskrow::domain;
using duskrow::tests::figures;
using Clock = std::chrono::steady_clock;

namespace {

constexpr int stations = 30;
constexpr int years = 30;

template <typename Work>
double bestOf(int times, const Work& work)
{
    double best = 1e9;
    for (int i = 0; i < times; ++i) {
        const auto from = Clock::now();
        work();
        best = std::min(best, std::chrono::duration<double, std::milli>(Clock::now() - from).count());
    }
    return best;
}

std::vector<std::vector<DayTemperature>> weather()
{
    std::mt19937_64 dice(20260714);
    std::normal_distribution<double> noise(0.0, 4.0);
    std::vector<std::vector<DayTemperature>> all(stations);
    for (auto& station : all)
        for (LocalDay day = dayOf(1996, 1, 1); day < dayOf(1996 + years, 1, 1); day += std::chrono::days{1}) {
            const double season = -std::cos(
                2 * 3.141592653589793 * static_cast<double>(day.time_since_epoch().count()) / 365.25);
            const double mean = 3 + 17 * season + noise(dice);
            const double half = 4 + std::abs(noise(dice));
            station.push_back({day, mean - half, mean + half});
        }
    return all;
}

} // namespace

int main(int argc, char** argv)
{
    const auto all = weather();
    if (argc > 1) {
        std::ofstream file(argv[1]);
        file.precision(17);
        for (const auto& station : all)
            for (const auto& day : station) file << day.minimum << ',' << day.maximum << '\n';
    }
    const HeatTerms terms{HeatMethod::SingleSine, 7, 30, CutOff::Horizontal};
    double total = 0.0;
    const double heat = bestOf(5, [&] {
        total = 0.0;
        for (const auto& station : all) total += sumDegreeDays(terms, station).back().total;
    });
    figures().limit("degree-days, 30 stations x 30 years", heat, "ms", 100);
    const double days[]{155, 161, 168, 176, 182, 189, 197, 203, 210, 218, 224, 231};
    const std::int64_t counts[]{2, 9, 41, 88, 121, 96, 45, 24, 9, 2, 1};
    TrapFlight trap;
    for (std::size_t i = 0; i < std::size(counts); ++i) trap.push_back({days[i], days[i + 1], counts[i]});
    const FlightPrior prior{190, 10, std::log(10.0), 0.35, std::log(5.0), 0.7};
    double middle = 0.0;
    const double flight = bestOf(5, [&] {
        const auto posterior = flightPosterior(std::span(&trap, 1), 231, prior);
        middle = posterior->median().mean;
    });
    figures().limit("flight of one trap, eleven intervals", flight, "ms", 50);
    const bool holds = figures().print();
    std::printf("{\"heat_ms\":%.3f,\"flight_ms\":%.3f,\"total\":%.6f,\"middle\":%.5f}\n", heat, flight, total,
        middle);
    return holds ? 0 : 1;
}
