// SPDX-License-Identifier: MIT
#include "domain/rules/uneven_posterior.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace duskrow::domain {

namespace {

constexpr int cells = 400; // even
constexpr double tailDrop = 28.0; // as a logarithm: where a tail is let go
constexpr double longestTail = 60.0;

} // namespace

double UnevenPosterior::logMeanAt(double place) const
{
    return m_centre + m_scale * std::sinh(place);
}

UnevenPosterior::UnevenPosterior(const FrameTally& tally, std::vector<DispersionNode>& nodes)
{
    const double larvae = static_cast<double>(tally.larvae.value()) + 0.5;
    const auto stops = static_cast<double>(tally.stops);
    m_centre = std::log(larvae / static_cast<double>(tally.frames.value()));
    m_scale = std::min(1.0, std::sqrt(1.0 / larvae + 1.0 / (stops * dispersionQuantile(nodes, 0.5))));
    // Far from the estimate the logarithm falls by larvae * distance below and by n k * distance above;
    // between, where k is small against the mean, by n k * exp(distance) below.
    const double leastSpread = tailDrop / (stops * nodes.front().k);
    const double down = tailDrop / larvae + std::log1p(leastSpread) + 2.0;
    const double up = leastSpread + 2.0;
    m_first = -std::asinh(std::min(longestTail, down) / m_scale);
    m_step = (std::asinh(std::min(longestTail, up) / m_scale) - m_first) / cells;

    // Rows of one dispersion each, as logarithms first: their largest is not known before.
    std::vector<std::vector<double>> rows;
    double largest = -std::numeric_limits<double>::infinity();
    for (const DispersionNode& node : nodes) {
        std::vector<double>& row = rows.emplace_back();
        for (int j = 0; j <= cells; ++j) {
            const double place = m_first + m_step * j;
            row.push_back(logDensityOf(tally, node, logMeanAt(place)) + std::log(std::cosh(place)));
            largest = std::max(largest, row.back());
        }
    }
    std::vector<double> density(cells + 1, 0.0);
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        nodes[i].weight = 0.0;
        for (std::size_t j = 0; j < density.size(); ++j) {
            const double part = std::exp(rows[i][j] - largest);
            nodes[i].weight += part;
            density[j] += part;
        }
    }

    // Summed from above, so that a small chance keeps its digits; Simpson over each pair of cells.
    m_above.assign(cells / 2 + 1, 0.0);
    m_density.assign(cells / 2 + 1, density[cells]);
    for (std::size_t i = cells / 2; i-- > 0;) {
        m_density[i] = density[2 * i];
        m_above[i] =
            m_above[i + 1] + m_step / 3.0 * (density[2 * i] + 4.0 * density[2 * i + 1] + density[2 * i + 2]);
    }
    const double whole = m_above.front();
    for (double& above : m_above) above /= whole;
    for (double& one : m_density) one /= whole;
    double weights = 0.0;
    for (const DispersionNode& node : nodes) weights += node.weight;
    for (DispersionNode& node : nodes) node.weight /= weights;
}

double UnevenPosterior::probabilityAbove(double logMean) const
{
    const double width = 2.0 * m_step;
    const double cell = (std::asinh((logMean - m_centre) / m_scale) - m_first) / width;
    if (cell <= 0.0) return 1.0;
    if (cell >= static_cast<double>(m_above.size() - 1)) return 0.0;
    const auto i = static_cast<std::size_t>(cell);
    const double t = cell - static_cast<double>(i);
    // Cubic through both ends with their slopes, which are known.
    const double u = 1.0 - t;
    return u * u * (1.0 + 2.0 * t) * m_above[i] - u * u * t * width * m_density[i]
        + t * t * (3.0 - 2.0 * t) * m_above[i + 1] + t * t * u * width * m_density[i + 1];
}

} // namespace duskrow::domain
