// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <span>
#include <vector>

#include "domain/rules/flight_posterior.h"

namespace duskrow::domain {

// The grid on which a flight's chances are weighed: mean, width and shape of the curve, and the dispersion of
// the counts. Values are logarithms of what is expected and of what the counts say.
class FlightGrid {
public:
    explicit FlightGrid(const FlightPrior& prior);

    // What one more trap says. Each has a size of its own, found by Newton's method in each cell.
    void take(const TrapFlight& trap);

    FlightPosterior finish(double until, std::int64_t moths, bool isPriorOnly);

private:
    static constexpr std::size_t means = 61; // over 4 spreads to either side
    static constexpr std::size_t widths = 31; // over 3.5
    static constexpr std::size_t dispersions = 7; // over 2.5

    using TakeCurve =
        std::function<void(FlightShape shape, double mean, double width, std::span<const double> values)>;
    void eachCurve(const TakeCurve& take) const;

    std::vector<double> m_means;
    std::vector<double> m_widths;
    std::vector<double> m_dispersions;
    std::vector<double> m_values; // by shape, mean, width and dispersion
};

} // namespace duskrow::domain
