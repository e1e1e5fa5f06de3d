// SPDX-License-Identifier: MIT
#include "domain/rules/mean_posterior.h"

#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

#include "domain/rules/boost_policy.h"

namespace duskrow::domain {

namespace {

constexpr double leastWeight = 1e-12;
constexpr double least = 1e-6; // of a probability asked for
constexpr double farthest = 600.0; // of a logarithm of a mean
constexpr double closeEnough = 1e-9; // in the logarithm of the mean
constexpr std::uintmax_t mostSteps = 100;

// P(M > mean) for one dispersion, M the mean of a stop.
double chanceAbove(double larvae, double stops, double k, double mean)
{
    // The smaller of the two shares is computed, so that neither loses its digits.
    if (mean > k) return boost::math::ibeta(stops * k, larvae + 0.5, k / (mean + k), NoThrow());
    return boost::math::ibetac(larvae + 0.5, stops * k, mean / (mean + k), NoThrow());
}

} // namespace

MeanPosterior::MeanPosterior(const FrameTally& tally)
    : m_larvae(static_cast<double>(tally.larvae.value())), m_stops(static_cast<double>(tally.stops)),
      m_framesAtAStop(static_cast<double>(tally.frames.value()) / m_stops), m_nodes(dispersionNodes(tally))
{
    if (!tally.isEven()) m_uneven.emplace(tally, m_nodes);
    std::erase_if(m_nodes, [](const DispersionNode& node) { return node.weight < leastWeight; });
}

double MeanPosterior::shareAbove(double logMean) const
{
    if (m_uneven) return m_uneven->probabilityAbove(logMean);
    const double mean = m_framesAtAStop * std::exp(logMean);
    double above = 0.0;
    for (const DispersionNode& node : m_nodes)
        above += node.weight * chanceAbove(m_larvae, m_stops, node.k, mean);
    return above;
}

double MeanPosterior::probabilityAbove(LarvaePerFrame mean) const
{
    if (!(mean.value() > 0.0)) return 1.0;
    return std::clamp(shareAbove(std::log(mean.value())), 0.0, 1.0);
}

LarvaePerFrame MeanPosterior::quantile(double probability) const
{
    const double wanted = 1.0 - std::clamp(probability, least, 1.0 - least);
    const auto excess = [&](double logMean) { return shareAbove(logMean) - wanted; };

    double low = std::log((m_larvae + 0.5) / (m_stops * m_framesAtAStop));
    double high = low;
    double atLow = excess(low);
    double atHigh = atLow;
    for (double step = 0.5; atLow < 0.0 && low > -farthest; step *= 2.0) {
        high = low;
        atHigh = atLow;
        low -= step;
        atLow = excess(low);
    }
    for (double step = 0.5; atHigh > 0.0 && high < farthest; step *= 2.0) {
        low = high;
        atLow = atHigh;
        high += step;
        atHigh = excess(high);
    }
    if (atLow <= 0.0) return LarvaePerFrame{std::exp(low)};
    if (atHigh >= 0.0) return LarvaePerFrame{std::exp(high)};
    std::uintmax_t steps = mostSteps;
    const auto isClose = [](double a, double b) { return std::abs(b - a) < closeEnough; };
    const auto found =
        boost::math::tools::toms748_solve(excess, low, high, atLow, atHigh, isClose, steps, NoThrow());
    return LarvaePerFrame{std::exp(0.5 * (found.first + found.second))};
}

double MeanPosterior::medianDispersion() const
{
    return dispersionQuantile(m_nodes, 0.5);
}

} // namespace duskrow::domain
