// SPDX-License-Identifier: MIT
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdint>
#include <ctime>

#include "bench/figures.h"
#include "domain/rules/visiting_order.h"

using namespace duskrow::domain;
using duskrow::tests::figures;

namespace {

// Stops over about 80 by 80 km, from a counter that looks random.
std::vector<RoundStop> stopsFor(std::size_t count)
{
    std::uint32_t state = 1;
    const auto next = [&state](std::int32_t below) {
        state = state * 1664525U + 1013904223U;
        return static_cast<std::int32_t>(
            static_cast<std::uint64_t>(state) * static_cast<std::uint32_t>(below) >> 32U);
    };
    std::vector<RoundStop> stops;
    for (std::size_t i = 0; i < count; ++i)
        stops.push_back({{518'000'000 + next(7'000'000), -1'072'000'000 + next(12'000'000)}, i % 10 == 0});
    return stops;
}

void theRound(benchmark::State& state)
{
    const auto stops = stopsFor(static_cast<std::size_t>(state.range(0)));
    const RoundSettings settings{
        .metric = state.range(1) == 0 ? RoundMetric::StraightLine : RoundMetric::SurveyGrid};
    double slowest = 0.0;
    double slowestAtWork = 0.0; // of the processor: what others on the machine take is left out
    double length = 0.0;
    double nearest = 0.0;
    for (auto _ : state) {
        const std::clock_t worked = std::clock();
        const auto start = std::chrono::steady_clock::now();
        const auto round = visitingOrder({521'579'020, -1'066'701'580}, stops, settings);
        slowest = std::max(slowest,
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
        slowestAtWork =
            std::max(slowestAtWork, 1000.0 * static_cast<double>(std::clock() - worked) / CLOCKS_PER_SEC);
        length = round->length.value();
        nearest = round->nearestLength.value();
        benchmark::DoNotOptimize(round->legs.data());
    }
    state.counters["of_nearest_next"] = length / nearest;
    const std::string name = "a round of " + std::to_string(stops.size()) + " stops, "
        + (state.range(1) == 0 ? "straight lines" : "survey grid") + ", slowest";
    figures().note(name, slowest, "ms");
    if (stops.size() == 100) figures().limit(name + ", at work", slowestAtWork, "ms", 20.0);
}

BENCHMARK(theRound)
    ->ArgNames({"stops", "grid"})
    ->Args({12, 0})
    ->Args({40, 0})
    ->Args({100, 0})
    ->Args({100, 1})
    ->Args({1000, 0})
    ->Unit(benchmark::kMillisecond)
    ->Iterations(20);

} // namespace

int main(int argc, char** argv)
{
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return figures().print() ? 0 : 1;
}
