// SPDX-License-Identifier: MIT
// The surface of a region of 500 traps on 200 by 200 cells, its covariance fitted, and without the fit.
#include <array>
#include <chrono>
#include <cmath>
#include <functional>
#include <random>

#include "bench/figures.h"
#include "domain/rules/regional_surface.h"

using namespace duskrow::domain;
using namespace duskrow::tests;

namespace {

std::vector<SurfaceTrap> invented(int count)
{
    std::mt19937 random(20260714);
    std::uniform_real_distribution<double> east(0, 400'000);
    std::uniform_real_distribution<double> north(0, 300'000);
    std::normal_distribution<double> noise(0, 0.5);
    std::vector<SurfaceTrap> traps;
    for (int i = 0; i < count; ++i) {
        const PlaneOffset place{east(random), north(random)};
        const double logarithm =
            4.5 + 1.5 * std::sin(place.eastMetres / 60'000) * std::cos(place.northMetres / 50'000);
        traps.push_back({place, Moths{std::llround(std::exp(logarithm + noise(random)))}});
    }
    return traps;
}

double bestOf(int runs, const std::function<void()>& work)
{
    double best = 1e9;
    for (int i = 0; i < runs; ++i) {
        const auto start = std::chrono::steady_clock::now();
        work();
        best = std::min(best,
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    }
    return best;
}

} // namespace

int main()
{
    constexpr SurfaceGrid grid{{0, 0}, Metres{2'000}, 200, 200};
    constexpr std::array edges{Moths{300}, Moths{900}};
    const auto traps = invented(500);
    RegionalSurface surface;
    const double whole = bestOf(5, [&] { surface = regionalSurface(traps, grid, edges); });
    std::vector<PlacedValue> values;
    for (const SurfaceTrap& trap : traps)
        values.push_back({trap.place, std::log1p(static_cast<double>(trap.total.value()))});
    const double fit = bestOf(5, [&] { static_cast<void>(fitCovariance(values)); });
    if (surface.standing != SurfaceStanding::Drawn) return 1;
    figures().limit("surface of 500 traps on 200 by 200 cells, best", whole, "ms", 300.0);
    figures().note("of it fitting the covariance", fit, "ms");
    return figures().print() ? 0 : 1;
}
