// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <random>

#include "domain/rules/mean_posterior.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

// How often the 95 % range of a walk holds the true mean, by simulated walks, against an earlier simulation
// of the same by other code. A cell fails when the two differ by more than both their Monte-Carlo errors
// allow:
//   |p - q| > 3.71 sqrt(r (1 - r) (1/N + 1/M)) + 0.0005,  r the pooled share, N and M the walks behind p and
//   q,
// where 3.71 leaves one chance in a hundred of a failure anywhere in 48 sound cells and 0.0005 is the
// rounding of the table.

namespace {

constexpr int walks = 10'000;
constexpr int walksOfTheTable = 3'000;
constexpr double reach = 3.71;
constexpr double rounding = 0.0005;

struct Cell {
    int stops;
    double dispersion;
    double mean;
    double expected;
};

double coverage(const Cell& cell, std::mt19937_64& dice)
{
    std::gamma_distribution<double> patch(cell.dispersion, cell.mean / cell.dispersion);
    int held = 0;
    std::vector<FrameStop> stops(static_cast<std::size_t>(cell.stops));
    for (int walk = 0; walk < walks; ++walk) {
        for (FrameStop& stop : stops) {
            const double density = patch(dice);
            stop.larvae = Larvae{density > 0.0 ? std::poisson_distribution<int>(density)(dice) : 0};
        }
        const auto tally = tallyOf(stops);
        if (!tally) std::abort();
        // The range holds the mean exactly when the chance above it lies between the tails.
        const double above = MeanPosterior(*tally).probabilityAbove(LarvaePerFrame{cell.mean});
        if (above >= 0.025 && above <= 0.975) ++held;
    }
    return static_cast<double>(held) / walks;
}

double allowed(double found, double expected)
{
    const double pooled = (found * walks + expected * walksOfTheTable) / (walks + walksOfTheTable);
    return reach * std::sqrt(pooled * (1.0 - pooled) * (1.0 / walks + 1.0 / walksOfTheTable)) + rounding;
}

} // namespace

int main(int argc, char** argv)
{
    const unsigned long long seed = argc > 1 ? std::strtoull(argv[1], nullptr, 10) : 20260714;
    std::mt19937_64 dice(seed);
    std::printf("seed %llu, %d walks a cell\n%5s %5s %6s %9s %9s %9s\n", seed, walks, "stops", "k", "mean",
        "held", "table", "allowed");
    double worst = 1.0;
    Cell worstCell{};
    int failed = 0;
    for (const auto& row : readGolden("rules/coverage.csv")) {
        const Cell cell{static_cast<int>(row.whole("n")), row.number("k"), row.number("mean_per_frame"),
            row.number("bayes_coverage")};
        const double found = coverage(cell, dice);
        const double most = allowed(found, cell.expected);
        const bool isOff = std::abs(found - cell.expected) > most;
        failed += isOff ? 1 : 0;
        if (found < worst) {
            worst = found;
            worstCell = cell;
        }
        std::printf("%5d %5.1f %6.1f %9.4f %9.3f %9.4f%s\n", cell.stops, cell.dispersion, cell.mean, found,
            cell.expected, most, isOff ? "  departs" : "");
    }
    std::printf("worst: %.4f at %d stops, k %.1f, mean %.1f\n%d cells depart from the table\n", worst,
        worstCell.stops, worstCell.dispersion, worstCell.mean, failed);
    return failed == 0 ? 0 : 1;
}
