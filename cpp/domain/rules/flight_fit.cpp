// SPDX-License-Identifier: MIT
#include "domain/rules/flight_fit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <vector>

namespace duskrow::domain {

namespace {

constexpr double leastPart = 1e-300;
constexpr int mostSteps = 200;

struct Place {
    double centre = 0.0;
    double logScale = 0.0;
};

class Likelihood {
public:
    Likelihood(FlightShape shape, std::span<const FlightInterval> trap, const FlightPrior* expected)
        : m_shape(shape), m_trap(trap), m_expected(expected)
    {
        for (const FlightInterval& interval : trap) m_moths += static_cast<double>(interval.moths);
    }

    [[nodiscard]] double over(const Place& place, double at) const
    {
        // A logistic's scale is not its standard deviation.
        const double perDeviation =
            m_shape == FlightShape::Logistic ? std::numbers::pi / std::numbers::sqrt3 : 1.0;
        return partOver(m_shape, (at - place.centre) / (std::exp(place.logScale) * perDeviation));
    }
    [[nodiscard]] double part(const Place& place, const FlightInterval& interval) const
    {
        return std::max(over(place, interval.to) - over(place, interval.from), leastPart);
    }
    [[nodiscard]] double parts(const Place& place) const
    {
        double sum = 0.0;
        for (const FlightInterval& interval : m_trap) sum += part(place, interval);
        return sum;
    }
    [[nodiscard]] double at(const Place& place) const
    {
        const double logAll = std::log(parts(place));
        double sum = 0.0;
        for (const FlightInterval& interval : m_trap)
            sum += static_cast<double>(interval.moths) * (std::log(part(place, interval)) - logAll);
        if (!m_expected) return sum;
        const double centre = (place.centre - m_expected->centre) / m_expected->centreSpread;
        const double scale = (place.logScale - m_expected->logWidth) / m_expected->logWidthSpread;
        return sum - 0.5 * (centre * centre + scale * scale);
    }
    [[nodiscard]] double moths() const { return m_moths; }

private:
    FlightShape m_shape;
    std::span<const FlightInterval> m_trap;
    const FlightPrior* m_expected;
    double m_moths = 0.0;
};

// Slopes and curvatures, by differences over steps that suit the scale.
struct Local {
    double g1 = 0.0, g2 = 0.0, h11 = 0.0, h12 = 0.0, h22 = 0.0;
    [[nodiscard]] double determinant() const { return h11 * h22 - h12 * h12; }
};

Local localOf(const Likelihood& likelihood, const Place& at)
{
    const double a = 1e-2 * std::exp(at.logScale);
    const double b = 1e-2;
    const auto value = [&](int i, int j) { return likelihood.at({at.centre + i * a, at.logScale + j * b}); };
    const auto mixed = [&](int i) {
        return (value(i, i) - value(i, -i) - value(-i, i) + value(-i, -i)) / (4.0 * i * i * a * b);
    };
    const double middle = value(0, 0);
    // Five points each, so that the steps may be long and a flat top is not lost among rounding errors.
    const std::array x{value(-2, 0), value(-1, 0), middle, value(1, 0), value(2, 0)};
    const std::array y{value(0, -2), value(0, -1), middle, value(0, 1), value(0, 2)};
    const auto slope = [](const auto& f, double h) {
        return (8.0 * (f[3] - f[1]) - (f[4] - f[0])) / (12.0 * h);
    };
    const auto bend = [](const auto& f, double h) {
        return (16.0 * (f[3] + f[1]) - f[4] - f[0] - 30.0 * f[2]) / (12.0 * h * h);
    };
    return {slope(x, a), slope(y, b), bend(x, a), (4.0 * mixed(1) - mixed(2)) / 3.0, bend(y, b)};
}

// Newton where the ground is a hill, else along the slope; never downhill.
std::optional<Place> highest(const Likelihood& likelihood, Place at)
{
    double height = likelihood.at(at);
    for (int step = 0; step < mostSteps; ++step) {
        const Local local = localOf(likelihood, at);
        const double determinant = local.determinant();
        const double scale = std::exp(at.logScale);
        double move1 = local.g1 > 0 ? scale : -scale;
        double move2 = local.g2 > 0 ? 0.3 : -0.3;
        const bool isHill = determinant > 0 && local.h11 < 0;
        if (isHill) {
            move1 = -(local.h22 * local.g1 - local.h12 * local.g2) / determinant;
            move2 = -(local.h11 * local.g2 - local.h12 * local.g1) / determinant;
        }
        const double longest = std::max(std::abs(move1) / scale, std::abs(move2));
        if (isHill && longest < 1e-9) return at;
        double share = std::min(1.0, 1.0 / longest);
        bool isHigher = false;
        for (int halving = 0; halving < 40 && !isHigher; ++halving, share /= 2) {
            const Place next{at.centre + share * move1, at.logScale + share * move2};
            const double reached = likelihood.at(next);
            isHigher = reached > height;
            if (!isHigher) continue;
            at = next;
            height = reached;
        }
        if (!isHigher) return isHill && longest < 1e-3 ? std::optional(at) : std::nullopt;
    }
    return std::nullopt;
}

} // namespace

std::optional<FlightFit> fitFlight(
    FlightShape shape, std::span<const FlightInterval> trap, const FlightPrior* expected)
{
    if (shape != FlightShape::Normal && shape != FlightShape::Logistic) return std::nullopt;
    const auto caught = std::count_if(trap.begin(), trap.end(), [](const auto& i) { return i.moths > 0; });
    if (trap.size() < 3 || caught < 2) return std::nullopt;
    const Likelihood likelihood(shape, trap, expected);
    double mean = 0.0, square = 0.0;
    for (const FlightInterval& interval : trap) {
        if (!(interval.to > interval.from)) return std::nullopt;
        const double middle = (interval.from + interval.to) / 2;
        mean += static_cast<double>(interval.moths) * middle / likelihood.moths();
        square += static_cast<double>(interval.moths) * middle * middle / likelihood.moths();
    }
    const double deviation = std::max(std::sqrt(std::max(square - mean * mean, 0.0)), 0.5);
    const auto found = highest(likelihood, {mean, std::log(deviation)});
    if (!found) return std::nullopt;
    FlightFit fit;
    fit.centre = found->centre;
    fit.scale = std::exp(found->logScale);
    fit.size = likelihood.moths() / likelihood.parts(*found);
    fit.logLikelihood = likelihood.at(*found);
    const Local local = localOf(likelihood, *found);
    fit.centreError = std::sqrt(-local.h22 / local.determinant());
    fit.logScaleError = std::sqrt(-local.h11 / local.determinant());
    for (const FlightInterval& interval : trap) {
        const double wanted = fit.size * likelihood.part(*found, interval);
        const double apart = static_cast<double>(interval.moths) - wanted;
        fit.misfit += apart * apart / wanted;
    }
    const auto freedom = static_cast<double>(trap.size()) - 3.0;
    if (freedom > 0) fit.overdispersion = std::max(1.0, fit.misfit / freedom);
    fit.part = likelihood.over(*found, trap.back().to);
    return fit;
}

} // namespace duskrow::domain
