// SPDX-License-Identifier: MIT
#include "domain/rules/flight_posterior.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "domain/rules/flight_grid.h"

namespace duskrow::domain {

namespace {

struct Weighed {
    double value = 0.0;
    double weight = 0.0;
};

// The value below which so much of the weight lies; `sorted` by value, weights adding up to `all`.
double quantile(const std::vector<Weighed>& sorted, double part)
{
    double below = 0.0;
    for (const Weighed& one : sorted) {
        below += one.weight;
        if (below >= part) return one.value;
    }
    return sorted.empty() ? 0.0 : sorted.back().value;
}

void sortByValue(std::vector<Weighed>& values)
{
    std::sort(
        values.begin(), values.end(), [](const Weighed& a, const Weighed& b) { return a.value < b.value; });
}

} // namespace

template <typename ValueOf>
ChanceRange FlightPosterior::rangeOf(const ValueOf& valueOf) const
{
    std::vector<Weighed> values;
    values.reserve(m_cells.size());
    ChanceRange range;
    for (const Cell& cell : m_cells) {
        values.push_back({valueOf(cell), cell.weight});
        range.mean += cell.weight * values.back().value;
    }
    double variance = 0.0;
    for (const Weighed& one : values)
        variance += one.weight * (one.value - range.mean) * (one.value - range.mean);
    range.deviation = std::sqrt(variance);
    sortByValue(values);
    range.low = quantile(values, 0.05);
    range.middle = quantile(values, 0.5);
    range.high = quantile(values, 0.95);
    return range;
}

ChanceRange FlightPosterior::width() const
{
    return rangeOf([](const Cell& cell) { return cell.width; });
}

ChanceRange FlightPosterior::reached(double part) const
{
    std::array<double, flightShapes.size()> points{};
    for (std::size_t i = 0; i < points.size(); ++i) points[i] = pointAt(flightShapes[i], part);
    return rangeOf([&](const Cell& cell) {
        return cell.mean + cell.width * points[static_cast<std::size_t>(cell.shape)];
    });
}

std::vector<FanPoint> FlightPosterior::fan(std::span<const double> points) const
{
    std::vector<FanPoint> fan;
    fan.reserve(points.size());
    std::vector<Weighed> values(m_cells.size());
    for (const double at : points) {
        for (std::size_t i = 0; i < m_cells.size(); ++i) {
            const Cell& cell = m_cells[i];
            values[i] = {partOver(cell.shape, (at - cell.mean) / cell.width), cell.weight};
        }
        sortByValue(values);
        fan.push_back({at, quantile(values, 0.05), quantile(values, 0.25), quantile(values, 0.5),
            quantile(values, 0.75), quantile(values, 0.95)});
    }
    return fan;
}

FlightStage FlightPosterior::stage() const
{
    if (m_isPriorOnly) return FlightStage::CannotTell;
    double early = 0.0;
    double past = 0.0;
    for (const Cell& cell : m_cells) {
        const double part = partOver(cell.shape, (m_until - cell.mean) / cell.width);
        if (part < 0.3) early += cell.weight;
        if (part > 0.7) past += cell.weight;
    }
    if (early > 0.5) return FlightStage::Early;
    if (past > 0.5) return FlightStage::PastPeak;
    return 1.0 - early - past > 0.5 ? FlightStage::AroundPeak : FlightStage::CannotTell;
}

FlightPosterior FlightGrid::finish(double until, std::int64_t moths, bool isPriorOnly)
{
    double largest = -std::numeric_limits<double>::infinity();
    for (const double value : m_values) largest = std::max(largest, value);
    FlightPosterior posterior;
    posterior.m_until = until;
    posterior.m_moths = moths;
    posterior.m_isPriorOnly = isPriorOnly;
    double all = 0.0;
    const auto take = [&](FlightShape shape, double mean, double width, std::span<const double> values) {
        double weight = 0.0;
        for (const double value : values) weight += std::exp(value - largest);
        all += weight;
        posterior.m_weights[static_cast<std::size_t>(shape)] += weight;
        posterior.m_cells.push_back({shape, mean, width, weight});
    };
    eachCurve(take);
    // So little that all of them together move no digit that anybody sees.
    std::erase_if(posterior.m_cells, [&](const auto& cell) { return cell.weight < all * 1e-10; });
    for (auto& cell : posterior.m_cells) cell.weight /= all;
    for (double& weight : posterior.m_weights) weight /= all;
    using Cell = FlightPosterior::Cell;
    posterior.m_median =
        posterior.rangeOf([](const Cell& cell) { return cell.mean + cell.width * medianOf(cell.shape); });
    posterior.m_peak =
        posterior.rangeOf([](const Cell& cell) { return cell.mean + cell.width * modeOf(cell.shape); });
    posterior.m_part = posterior.rangeOf(
        [&](const Cell& cell) { return partOver(cell.shape, (until - cell.mean) / cell.width); });
    return posterior;
}

Result<FlightPosterior> flightPosterior(
    std::span<const TrapFlight> traps, double until, const FlightPrior& prior)
{
    std::int64_t moths = 0;
    std::size_t intervals = 0;
    for (const TrapFlight& trap : traps)
        for (const FlightInterval& interval : trap) {
            const bool isBackwards = !(interval.to >= interval.from) || interval.moths < 0;
            if (isBackwards || (interval.to == interval.from && interval.moths > 0))
                return Error{ErrorCode::NotADay, {}};
            if (interval.to == interval.from) continue;
            moths += interval.moths;
            ++intervals;
        }
    const bool isPriorOnly = moths < fewestMothsForFlight || intervals < 2;
    FlightGrid grid(prior);
    if (!isPriorOnly)
        for (const TrapFlight& trap : traps) grid.take(trap);
    return grid.finish(until, moths, isPriorOnly);
}

} // namespace duskrow::domain
