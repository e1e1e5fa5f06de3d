// SPDX-License-Identifier: MIT
#include <algorithm>
#include <benchmark/benchmark.h>
#include <boost/math/special_functions/beta.hpp>
#include <chrono>
#include <cmath>
#include <functional>
#include <numeric>

#include "bench/figures.h"
#include "domain/rules/frame_estimate.h"
#include "domain/rules/stop_table.h"

using namespace duskrow::domain;
using namespace duskrow::tests;

namespace {

using Clock = std::chrono::steady_clock;

constexpr std::array counts{4, 9, 2, 15, 0, 6, 3, 8, 1, 7, 5, 0, 12, 2, 4, 9, 3, 0, 21, 6};
constexpr SquareMetres frame{0.25};
constexpr LarvaePerSquareMetre threshold{20.0};

double millisecondsOf(const std::function<void()>& work)
{
    const auto start = Clock::now();
    work();
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

double medianOf(std::vector<double> times)
{
    const auto middle = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
    std::nth_element(times.begin(), middle, times.end());
    return *middle;
}

std::vector<FrameStop> walk(std::int64_t framesAtTheFirst = 1)
{
    std::vector<FrameStop> stops;
    for (const int count : counts) stops.push_back({Larvae{count}});
    stops.front().frames = Frames{framesAtTheFirst};
    return stops;
}

StopPlan usualPlan()
{
    StopDesign design;
    design.threshold = threshold;
    const auto plan = planStops(design);
    if (!plan) std::abort();
    return *plan;
}

// The same mixture as one would first write it: 31 dispersions over four and a half deviations, weighed once,
// and sixty halvings for each limit.
struct Naive {
    double total = std::accumulate(counts.begin(), counts.end(), 0.0);
    double n = static_cast<double>(counts.size());
    std::vector<std::pair<double, double>> weighed; // dispersion, weight

    Naive()
    {
        double all = 0.0;
        for (int i = 0; i < 31; ++i) {
            const double logK = -4.5 + 0.3 * i;
            const double k = std::exp(logK);
            double log = -0.5 * logK * logK + 0.5 * logK + std::lgamma(total + 0.5) + std::lgamma(n * k)
                - std::lgamma(total + 0.5 + n * k);
            for (const int count : counts) log += std::lgamma(count + k) - std::lgamma(k);
            weighed.emplace_back(k, std::exp(log - 150.0));
            all += weighed.back().second;
        }
        for (auto& [k, weight] : weighed) weight /= all;
    }
    [[nodiscard]] double below(double mean) const
    {
        double sum = 0.0;
        for (const auto& [k, weight] : weighed)
            sum += weight * boost::math::ibeta(total + 0.5, n * k, mean / (mean + k));
        return sum;
    }
    [[nodiscard]] double limit(double probability) const
    {
        double low = -20.0;
        double high = 20.0;
        for (int i = 0; i < 60; ++i) {
            const double middle = 0.5 * (low + high);
            (below(std::exp(middle)) < probability ? low : high) = middle;
        }
        return 4.0 * std::exp(low);
    }
};

// What a screen does after each frame; both ways in one run, one after the other.
void estimateOfTwentyFrames(benchmark::State& state)
{
    const auto stops = walk();
    const StopPlan plan = usualPlan();
    std::vector<double> own;
    std::vector<double> naive;
    for (auto _ : state) {
        std::optional<FrameEstimate> estimate;
        own.push_back(millisecondsOf([&] {
            estimate = *estimateFrames(stops, frame, threshold);
            const auto lines = planStops(plan.design);
            if (!lines) std::abort();
            benchmark::DoNotOptimize(
                stopAfter(*lines, estimate->stops, estimate->larvae, estimate->dispersion));
        }));
        double low = 0.0;
        double high = 0.0;
        naive.push_back(millisecondsOf([&] {
            const Naive first;
            low = first.limit(0.025);
            high = first.limit(0.975);
            benchmark::DoNotOptimize(first.below(5.0));
        }));
        if (std::abs(low / estimate->range->low.value() - 1) > 1e-5) return state.SkipWithError("low");
        if (std::abs(high / estimate->range->high.value() - 1) > 1e-5) return state.SkipWithError("high");
    }
    figures().limit("20 frames: range, chance and lines, median", medianOf(own), "ms", 16.0);
    figures().note("20 frames: the same by plain halving, median", medianOf(naive), "ms");
    figures().note("plain halving / own", medianOf(naive) / medianOf(own), "x");
}
BENCHMARK(estimateOfTwentyFrames)->Iterations(100)->Unit(benchmark::kMillisecond);

void estimateOfUnevenStops(benchmark::State& state)
{
    const auto stops = walk(2);
    std::vector<double> times;
    for (auto _ : state)
        times.push_back(millisecondsOf(
            [&] { benchmark::DoNotOptimize(estimateFrames(stops, frame, threshold)->probabilityAbove); }));
    figures().limit("20 stops of unequal size, median", medianOf(times), "ms", 16.0);
}
BENCHMARK(estimateOfUnevenStops)->Iterations(100)->Unit(benchmark::kMillisecond);

void tableOfAPlan(benchmark::State& state)
{
    const StopPlan plan = usualPlan();
    std::vector<LarvaePerSquareMetre> densities;
    for (const double factor : {0.2, 0.4, 0.6, 2.0 / 3.0, 0.8, 1.0, 1.2, 1.5, 2.0, 3.0})
        densities.emplace_back(threshold.value() * factor);
    std::vector<double> times;
    for (auto _ : state)
        times.push_back(millisecondsOf(
            [&] { benchmark::DoNotOptimize(operatingTable(plan, densities, 1.0)->front().below); }));
    figures().limit("exact table of a plan, ten densities, median", medianOf(times), "ms", 50.0);
}
BENCHMARK(tableOfAPlan)->Iterations(100)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv)
{
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return figures().print() ? 0 : 1;
}
