// SPDX-License-Identifier: MIT
#include "domain/rules/flight_grid.h"

#include <algorithm>
#include <cmath>

namespace duskrow::domain {

namespace {

// Of a flight in an interval. Below it the tail of a shape says nothing that a field would keep to, and all
// curves are alike; the computed values this is held to have the same floor.
constexpr double leastPart = 1e-12;
constexpr int mostSteps = 50;
constexpr double closeEnough = 1e-6; // Newton: what is left is about the square of it

// Points evenly over so many spreads to either side of the centre, and the logarithm of the normal density.
double pointOf(std::size_t at, std::size_t count, double reach)
{
    return -reach + 2.0 * reach * static_cast<double>(at) / static_cast<double>(count - 1);
}

struct SeenInterval {
    double moths = 0.0;
    double part = 0.0; // of the flight, in the curve at hand
    double logPart = 0.0;
};

// The logarithm of the chance of a trap's counts with its size profiled out and Laplace's correction for it.
// The terms that hold the counts and k alone are added by the caller.
//
// logSize  where to begin, and what was found: the next dispersion has its size close by
double logChance(std::span<const SeenInterval> seen, double k, double& logSize)
{
    double information = 0.0;
    for (int step = 0; step < mostSteps; ++step) {
        const double size = std::exp(logSize);
        double score = 0.0;
        information = 0.0;
        for (const SeenInterval& one : seen) {
            const double expected = size * one.part;
            const double share = k / (k + expected);
            score += (one.moths - expected) * share;
            information += expected * (k + one.moths) * share / (k + expected);
        }
        const double move = std::clamp(score / information, -1.0, 1.0);
        logSize += move;
        if (std::abs(move) < closeEnough) break;
    }
    const double size = std::exp(logSize);
    double sum = -0.5 * std::log(information);
    for (const SeenInterval& one : seen) {
        const double logBoth = std::log(k + size * one.part);
        sum += one.moths * (logSize + one.logPart - logBoth) - k * logBoth;
    }
    return sum;
}

} // namespace

FlightGrid::FlightGrid(const FlightPrior& prior)
{
    for (std::size_t i = 0; i < means; ++i)
        m_means.push_back(prior.centre + prior.centreSpread * pointOf(i, means, 4.0));
    for (std::size_t i = 0; i < widths; ++i)
        m_widths.push_back(std::exp(prior.logWidth + prior.logWidthSpread * pointOf(i, widths, 3.5)));
    for (std::size_t i = 0; i < dispersions; ++i)
        m_dispersions.push_back(
            std::exp(prior.logDispersion + prior.logDispersionSpread * pointOf(i, dispersions, 2.5)));
    m_values.reserve(flightShapes.size() * means * widths * dispersions);
    const auto logPrior = [](std::size_t at, std::size_t count, double reach) {
        const double point = pointOf(at, count, reach);
        return -0.5 * point * point;
    };
    for (std::size_t shape = 0; shape < flightShapes.size(); ++shape)
        for (std::size_t i = 0; i < means; ++i)
            for (std::size_t j = 0; j < widths; ++j)
                for (std::size_t l = 0; l < dispersions; ++l)
                    m_values.push_back(
                        logPrior(i, means, 4.0) + logPrior(j, widths, 3.5) + logPrior(l, dispersions, 2.5));
}

void FlightGrid::take(const TrapFlight& trap)
{
    std::vector<SeenInterval> seen;
    double moths = 0.0;
    for (const FlightInterval& interval : trap) {
        if (!(interval.to > interval.from)) continue;
        seen.push_back({static_cast<double>(interval.moths), 0.0});
        moths += seen.back().moths;
    }
    if (moths <= 0.0) return; // a trap without a moth has no size, and its shape says nothing
    std::vector<double> ofCounts;
    for (const double k : m_dispersions) {
        double sum = 0.0;
        for (const SeenInterval& one : seen)
            sum += std::lgamma(one.moths + k) - std::lgamma(k) + k * std::log(k);
        ofCounts.push_back(sum);
    }
    std::size_t at = 0;
    for (const FlightShape shape : flightShapes)
        for (const double mean : m_means)
            for (const double width : m_widths) {
                std::size_t i = 0;
                double parts = 0.0;
                double reached = -1.0; // the end of the interval before, and what was over by then
                double over = 0.0;
                for (const FlightInterval& interval : trap) {
                    if (!(interval.to > interval.from)) continue;
                    const double before = i > 0 && reached == interval.from
                        ? over
                        : partOver(shape, (interval.from - mean) / width);
                    over = partOver(shape, (interval.to - mean) / width);
                    reached = interval.to;
                    seen[i].part = std::max(over - before, leastPart);
                    parts += seen[i].part;
                    seen[i].logPart = std::log(seen[i].part);
                    ++i;
                }
                double logSize = std::log(moths / parts);
                for (std::size_t l = 0; l < m_dispersions.size(); ++l)
                    m_values[at++] += ofCounts[l] + logChance(seen, m_dispersions[l], logSize);
            }
}

void FlightGrid::eachCurve(const TakeCurve& take) const
{
    std::size_t at = 0;
    for (const FlightShape shape : flightShapes)
        for (const double mean : m_means)
            for (const double width : m_widths) {
                take(shape, mean, width, std::span(m_values).subspan(at, m_dispersions.size()));
                at += m_dispersions.size();
            }
}

} // namespace duskrow::domain
