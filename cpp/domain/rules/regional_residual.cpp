// SPDX-License-Identifier: MIT
#include "domain/rules/regional_residual.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "domain/rules/neighbours.h"

namespace duskrow::domain {

namespace {

constexpr std::size_t mostAround = 6;
constexpr std::size_t leastAround = 3;
constexpr Metres reach{80'000.0};
constexpr double shrinkAfter = 2.0;
constexpr double leastSpread = 0.2;
constexpr double madToDeviation = 1.4826; // of a normal distribution
constexpr std::size_t leastResiduals = 20;
constexpr MothsPerWeek leastTelling{2.0};
constexpr Nights mostNights{21};
constexpr double nightsOfAWeek = 7.0;
constexpr double farAbove = 2.5;
constexpr double farBelow = -3.0;

double onLogScale(MothsPerWeek rate)
{
    return std::log1p(std::max(0.0, rate.value()));
}

double medianOf(std::vector<double> values)
{
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1) return *middle;
    return (*std::max_element(values.begin(), middle) + *middle) / 2.0;
}

// How a trap differed from the traps around it in earlier counts.
struct Offset {
    double sum = 0.0;
    double counts = 0.0;

    [[nodiscard]] double expected() const { return counts > 0.0 ? sum / (counts + shrinkAfter) : 0.0; }
    void learn(double difference)
    {
        sum += difference;
        counts += 1.0;
    }
};

using Numbers = std::vector<std::size_t>; // of counts

class SeasonCounts {
public:
    explicit SeasonCounts(std::span<const RegionalCount> counts) : m_counts(counts) { }

    std::vector<RegionalResidual> residuals()
    {
        std::map<LocalDay, Numbers> weeks;
        for (std::size_t i = 0; i < m_counts.size(); ++i)
            if (m_counts[i].nights <= mostNights) weeks[m_counts[i].week].push_back(i);
        for (const auto& [week, numbers] : weeks) takeWeek(numbers);
        scoreAll();
        return std::move(m_residuals);
    }

private:
    // One count of each trap stands for its week: the last.
    Numbers lastOfEachTrap(const Numbers& week) const
    {
        std::map<Uuid, std::size_t> last;
        for (const std::size_t number : week) last[m_counts[number].trap] = number;
        Numbers numbers;
        numbers.reserve(last.size());
        for (const auto& [trap, number] : last) numbers.push_back(number);
        return numbers;
    }

    void takeWeek(const Numbers& week)
    {
        const Numbers standing = lastOfEachTrap(week);
        std::vector<GeoPoint> places;
        places.reserve(standing.size());
        for (const std::size_t number : standing) places.push_back(m_counts[number].place);
        const auto neighbours = neighboursOf(places, mostAround, reach);
        std::map<Uuid, std::size_t> placeOf;
        for (std::size_t i = 0; i < standing.size(); ++i) placeOf[m_counts[standing[i]].trap] = i;
        for (const std::size_t number : week) {
            const auto& around = neighbours[placeOf.find(m_counts[number].trap)->second];
            if (around.size() >= leastAround) take(number, standing, around);
        }
    }

    void take(std::size_t number, const Numbers& standing, const std::vector<Neighbour>& around)
    {
        const RegionalCount& own = m_counts[number];
        RegionalResidual residual{.count = number, .around = {}, .expected = {}, .score = {}};
        std::vector<double> rates;
        for (const Neighbour& neighbour : around) {
            const RegionalCount& other = m_counts[standing[neighbour.at]];
            residual.around.push_back({other.trap, other.visit, other.rate, neighbour.distance});
            rates.push_back(onLogScale(other.rate));
        }
        const double median = medianOf(std::move(rates));
        Offset& offset = m_offsets[own.trap];
        const double expected = std::max(0.0, median + offset.expected());
        residual.expected = MothsPerWeek{std::expm1(expected)};
        residual.residual = onLogScale(own.rate) - expected;
        offset.learn(onLogScale(own.rate) - median);
        m_residuals.push_back(std::move(residual));
    }

    // Where next to nothing is expected, residuals are small however wild the traps are.
    [[nodiscard]] std::vector<double> telling() const
    {
        std::vector<double> all;
        std::vector<double> larger;
        for (const RegionalResidual& residual : m_residuals) {
            all.push_back(residual.residual);
            if (residual.expected >= leastTelling) larger.push_back(residual.residual);
        }
        return larger.size() >= leastResiduals ? larger : all;
    }

    void scoreAll()
    {
        std::vector<double> values = telling();
        if (values.size() < leastResiduals) return;
        const double median = medianOf(values);
        for (double& value : values) value = std::abs(value - median);
        const double spread = std::max(leastSpread, madToDeviation * medianOf(std::move(values)));
        for (RegionalResidual& residual : m_residuals) {
            const double weeks = static_cast<double>(m_counts[residual.count].nights.value()) / nightsOfAWeek;
            const double counting = 1.0 / (residual.expected.value() * weeks + 1.0);
            residual.score = (residual.residual - median) / std::sqrt(spread * spread + counting);
        }
    }

    std::span<const RegionalCount> m_counts;
    std::map<Uuid, Offset> m_offsets;
    std::vector<RegionalResidual> m_residuals;
};

} // namespace

bool RegionalResidual::isFarAbove() const
{
    return score && *score > farAbove;
}

bool RegionalResidual::isFarBelow() const
{
    return score && *score < farBelow;
}

std::vector<RegionalResidual> regionalResiduals(std::span<const RegionalCount> counts)
{
    return SeasonCounts(counts).residuals();
}

} // namespace duskrow::domain
