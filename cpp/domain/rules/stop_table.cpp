// SPDX-License-Identifier: MIT
#include "domain/rules/stop_table.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace duskrow::domain {

namespace {

constexpr double highestDensity = 100'000.0;
constexpr double nineInTen = 0.9;

// Chances of 0, 1, ... larvae, `size` of them. By logarithms, since the first may be too small for a number.
std::vector<double> negativeBinomial(double mean, double k, std::size_t size)
{
    std::vector<double> chances(size, 0.0);
    if (size == 0) return chances;
    chances[0] = 1.0;
    if (mean <= 0.0) return chances;
    const bool isByChance = std::isinf(k);
    double log = isByChance ? -mean : -k * std::log1p(mean / k);
    const double odds = isByChance ? mean : mean / (mean + k);
    chances[0] = std::exp(log);
    for (std::size_t x = 1; x < size; ++x) {
        const auto n = static_cast<double>(x);
        log += std::log(odds * (isByChance ? 1.0 : n - 1.0 + k) / n);
        chances[x] = std::exp(log);
    }
    return chances;
}

// The walks that are not over, by their total, and what became of the others.
class Walks {
public:
    Walks(const StopPlan& plan, double meanAtAStop, double dispersion)
        : m_plan(plan), m_mean(meanAtAStop), m_dispersion(dispersion)
    {
    }

    void run()
    {
        const int fewest = m_plan.design.fewest;
        const int most = m_plan.design.most;
        const std::size_t largest = size(most);
        m_aStop = negativeBinomial(m_mean, m_dispersion, largest);
        // No walk is over before the fewest stops, so their total has a known distribution.
        m_going = negativeBinomial(fewest * m_mean, fewest * m_dispersion, size(fewest));
        m_from = 0;
        leave(fewest, 1.0);
        for (int stops = fewest + 1; stops <= most; ++stops) {
            const double before = going();
            addAStop(stops);
            leave(stops, before);
        }
        const double half = m_plan.thresholdAtAStop * most;
        for (std::size_t i = 0; i < m_going.size(); ++i)
            (static_cast<double>(m_from + i) < half ? row.undecidedBelow : row.undecidedAbove) += m_going[i];
        row.meanStops += most * going();
        if (row.stopsOfNineInTen == 0) row.stopsOfNineInTen = most;
    }

    OperatingRow row;

private:
    // Totals that do not say "above": 0 to size - 1.
    [[nodiscard]] std::size_t size(int stops) const
    {
        return static_cast<std::size_t>(aboveFrom(m_plan, stops)->value());
    }
    [[nodiscard]] double going() const { return std::accumulate(m_going.begin(), m_going.end(), 0.0); }

    void addAStop(int stops)
    {
        const std::size_t end = size(stops);
        std::vector<double> next(end - m_from, 0.0);
        for (std::size_t i = 0; i < m_going.size(); ++i) {
            const double chance = m_going[i];
            for (std::size_t j = i; j < next.size(); ++j) next[j] += chance * m_aStop[j - i];
        }
        m_going = std::move(next);
    }

    // Takes out the walks that end after so many stops.
    //
    // before  the share of walks that made this stop
    void leave(int stops, double before)
    {
        const double above = std::max(0.0, before - going());
        double below = 0.0;
        if (const auto line = belowUpTo(m_plan, stops)) {
            const auto last = static_cast<std::size_t>(line->value());
            const std::size_t gone = last < m_from ? 0 : std::min(m_going.size(), last + 1 - m_from);
            const auto end = m_going.begin() + static_cast<std::ptrdiff_t>(gone);
            below = std::accumulate(m_going.begin(), end, 0.0);
            m_going.erase(m_going.begin(), end);
            m_from += gone;
        }
        row.below += below;
        row.above += above;
        row.meanStops += stops * (below + above);
        if (row.stopsOfNineInTen == 0 && row.below + row.above >= nineInTen) row.stopsOfNineInTen = stops;
    }

    const StopPlan& m_plan;
    double m_mean;
    double m_dispersion;
    std::vector<double> m_aStop;
    std::vector<double> m_going; // chance of the totals from m_from on
    std::size_t m_from = 0;
};

} // namespace

Result<std::vector<OperatingRow>> operatingTable(
    const StopPlan& plan, std::span<const LarvaePerSquareMetre> densities, double dispersion)
{
    if (!(dispersion >= 0.2)) return Error{ErrorCode::OutOfRange, {"dispersion", "0.2", "1000"}};
    std::vector<OperatingRow> rows;
    for (const LarvaePerSquareMetre density : densities) {
        if (!(density.value() >= 0.0 && density.value() <= highestDensity))
            return Error{ErrorCode::OutOfRange, {"density_per_m2", "0", "100000"}};
        Walks walks(plan, density.value() * plan.design.areaOfAStop.value(), dispersion);
        walks.run();
        walks.row.density = density;
        rows.push_back(walks.row);
    }
    return rows;
}

} // namespace duskrow::domain
