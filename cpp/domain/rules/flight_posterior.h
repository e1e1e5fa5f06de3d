// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

#include "domain/base/result.h"
#include "domain/rules/flight_curve.h"

namespace duskrow::domain {

// Moths of one interval between two looks into a trap. The axis is days or degree-days, alike for all.
struct FlightInterval {
    double from = 0.0;
    double to = 0.0;
    std::int64_t moths = 0;
};

// The observed intervals of one trap. What was missed, lost or is only a minimum is simply not among them:
// the curve is held against what was seen and says nothing of what was not.
using TrapFlight = std::vector<FlightInterval>;

// What is expected of a flight before anything is caught; widths are natural logarithms.
struct FlightPrior {
    double centre = 0.0; // of the flight's mean, on the axis
    double centreSpread = 1.0;
    double logWidth = 0.0; // of the flight's standard deviation
    double logWidthSpread = 0.35;
    double logDispersion = 1.6094379124341003; // of k; ln 5
    double logDispersionSpread = 0.7;
};

// 5, 50 and 95 of a hundred chances lie below these.
struct ChanceRange {
    double mean = 0.0;
    double deviation = 0.0;
    double low = 0.0;
    double middle = 0.0;
    double high = 0.0;
};

// Where the flight of one trap stands, or that nobody can say.
enum class FlightStage { CannotTell, Early, AroundPeak, PastPeak };

struct FanPoint {
    double at = 0.0;
    double low = 0.0; // part over, 0 to 1: 5 of a hundred chances lie below
    double quarter = 0.0;
    double middle = 0.0;
    double threeQuarters = 0.0;
    double high = 0.0;
};

// What the counts and what was expected say together of one flight, over four shapes of it. Whole
// distributions: nothing of it is one number, and a part that is over is shown as a range alone.
class FlightPosterior {
public:
    [[nodiscard]] const ChanceRange& median() const { return m_median; } // half is over
    [[nodiscard]] const ChanceRange& peak() const { return m_peak; }
    [[nodiscard]] const ChanceRange& part() const { return m_part; } // over at the last look, 0 to 1
    [[nodiscard]] const std::array<double, 4>& weights() const { return m_weights; } // of flightShapes
    [[nodiscard]] double until() const { return m_until; } // the last look
    [[nodiscard]] std::int64_t moths() const { return m_moths; }
    [[nodiscard]] ChanceRange width() const; // standard deviation of the flight

    // Too little was caught to say anything: all of this is what was expected beforehand.
    [[nodiscard]] bool isPriorOnly() const { return m_isPriorOnly; }

    // The point by which a part of the flight is over.
    [[nodiscard]] ChanceRange reached(double part) const;

    // At some points of the axis, ascending.
    [[nodiscard]] std::vector<FanPoint> fan(std::span<const double> points) const;

    // Early while less than three tenths are over, past the peak when more than seven tenths are; said only
    // when it is more likely than all else together. Common practice, no source.
    [[nodiscard]] FlightStage stage() const;

private:
    friend class FlightGrid;
    struct Cell {
        FlightShape shape = FlightShape::Normal;
        double mean = 0.0;
        double width = 0.0;
        double weight = 0.0;
    };

    template <typename ValueOf>
    [[nodiscard]] ChanceRange rangeOf(const ValueOf& valueOf) const;

    std::vector<Cell> m_cells; // that have any weight; the weights add up to 1
    ChanceRange m_median, m_peak, m_part;
    std::array<double, 4> m_weights{};
    double m_until = 0.0;
    std::int64_t m_moths = 0;
    bool m_isPriorOnly = false;
};

inline constexpr std::int64_t fewestMothsForFlight = 10;

// Negative binomial counts, one size for each trap that is profiled out with Laplace's correction, over a
// grid of mean, width, dispersion and shape: always the same, and never without an answer. Under ten moths or
// with a single interval the counts say nothing and what was expected stands.
//
// traps   of one place or district; each has its own size and all share one flight
// until   the point at which the part that is over is asked; at or after every interval
// Errors  NotADay {} for an interval that runs backwards, or in no time with moths in it
// Source  method and its figures: computed with R, see tests/golden/rules/phenology_grid.csv; the interval
// totals
//         as a multinomial of a curve: Cockfield and Mahr 1994; dispersion around it and the grid: our own
Result<FlightPosterior> flightPosterior(
    std::span<const TrapFlight> traps, double until, const FlightPrior& prior);

} // namespace duskrow::domain
