// SPDX-License-Identifier: MIT
#include "domain/rules/heavy_catch.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <cmath>
#include <cstdint>
#include <string>
#include <vector>

#include "domain/rules/boost_policy.h"

namespace duskrow::domain {

namespace {

constexpr std::int64_t mostMoths = 1'000'000'000;
constexpr double tailChance = 0.025;
constexpr double normalQuantile = 1.96;
constexpr double assumedClumping = 2.0;
constexpr double volumeError = 0.05;
constexpr double balanceError = 0.02;
// Below this the parts differ by rounding only.
constexpr double noClumping = 1e-9;

const Error partTooLarge{ErrorCode::PartTooLarge};

Error tooMany()
{
    return {ErrorCode::OutOfRange, {"moths", "0", std::to_string(mostMoths)}};
}

// Counts and amounts as numbers, once they are known to make sense together.
struct PooledParts {
    std::vector<double> counts;
    std::vector<double> amounts;
    std::int64_t counted = 0;
    double amount = 0.0;
    double whole = 0.0;
    bool isWholeCounted = false;

    [[nodiscard]] double fraction() const { return amount / whole; }
    [[nodiscard]] double estimate() const { return static_cast<double>(counted) / fraction(); }
};

template <typename Part, typename Amount>
Result<PooledParts> pool(std::span<const Part> parts, Amount whole)
{
    if (parts.empty()) return Error{ErrorCode::Empty, {"part"}};
    if (whole.value() <= 0) return partTooLarge;
    PooledParts pooled;
    std::int64_t rest = whole.value();
    for (const Part& part : parts) {
        const std::int64_t counted = part.counted.value();
        const std::int64_t amount = part.amount.value();
        if (amount <= 0 || amount > rest) return partTooLarge;
        if (counted < 0 || counted > mostMoths - pooled.counted) return tooMany();
        rest -= amount;
        pooled.counted += counted;
        pooled.counts.push_back(static_cast<double>(counted));
        pooled.amounts.push_back(static_cast<double>(amount));
    }
    pooled.amount = static_cast<double>(whole.value() - rest);
    pooled.whole = static_cast<double>(whole.value());
    pooled.isWholeCounted = rest == 0;
    if (pooled.estimate() > static_cast<double>(mostMoths)) return tooMany();
    return pooled;
}

Moths rounded(double moths)
{
    return Moths{std::llround(moths)};
}

// The largest whole of which a part without a single moth still has more than 2.5 % chance.
double highestWhenNoneCounted(double fraction)
{
    return std::floor(std::log(tailChance) / std::log1p(-fraction));
}

SpreadEstimate spreadOf(const PooledParts& pooled)
{
    const auto n = static_cast<double>(pooled.counts.size());
    const double ratio = static_cast<double>(pooled.counted) / pooled.amount;
    double squares = 0.0;
    for (std::size_t i = 0; i < pooled.counts.size(); ++i) {
        const double difference = pooled.counts[i] - ratio * pooled.amounts[i];
        squares += difference * difference;
    }
    const double variance = squares / (n - 1.0);
    const double meanAmount = pooled.amount / n;
    const double meanCount = static_cast<double>(pooled.counted) / n;

    SpreadEstimate spread;
    spread.estimate = pooled.whole * ratio;
    spread.standardError = pooled.whole / meanAmount * std::sqrt((1.0 - pooled.fraction()) * variance / n);
    const boost::math::students_t_distribution<double, NoThrow> student(n - 1.0);
    const double reach = boost::math::quantile(student, 1.0 - tailChance) * spread.standardError;
    spread.low = spread.estimate - reach;
    spread.high = spread.estimate + reach;
    spread.clumping = meanCount > 0.0 ? variance / meanCount : 0.0;
    return spread;
}

Result<HeavyCatch> noneCounted(const PooledParts& pooled)
{
    const double high = highestWhenNoneCounted(pooled.fraction());
    if (high > static_cast<double>(mostMoths)) return tooMany();
    return HeavyCatch{Moths{0}, Moths{0}, rounded(high), std::nullopt, HeavyCatchMethod::AssumedClumping};
}

Result<HeavyCatch> estimate(const PooledParts& pooled, double fractionError)
{
    const Moths counted{pooled.counted};
    if (pooled.isWholeCounted) return HeavyCatch{counted, {}, {}, {}, HeavyCatchMethod::WholeCounted};
    if (pooled.counted == 0) return noneCounted(pooled);
    if (pooled.counts.size() >= 3) {
        const SpreadEstimate spread = spreadOf(pooled);
        if (spread.clumping > noClumping)
            return HeavyCatch{rounded(spread.estimate), std::max(counted, rounded(spread.low)),
                rounded(spread.high), spread.clumping, HeavyCatchMethod::SpreadOfParts};
    }
    const double mean = pooled.estimate();
    const double sampling = (1.0 - pooled.fraction()) * assumedClumping / static_cast<double>(pooled.counted);
    const double factor = std::exp(normalQuantile * std::sqrt(sampling + fractionError * fractionError));
    return HeavyCatch{rounded(mean), std::max(counted, rounded(mean / factor)), rounded(mean * factor),
        assumedClumping, HeavyCatchMethod::AssumedClumping};
}

Result<SpreadEstimate> spreadAlone(const Result<PooledParts>& pooled)
{
    if (!pooled) return pooled.error();
    if (pooled->counts.size() < 2) return Error{ErrorCode::TooFewParts};
    return spreadOf(*pooled);
}

// P(X >= counted) when the whole holds `whole` moths.
double chanceOfSoMany(std::int64_t counted, std::int64_t whole, double fraction)
{
    if (counted == 0) return 1.0;
    return boost::math::ibeta(
        static_cast<double>(counted), static_cast<double>(whole - counted + 1), fraction, NoThrow());
}

// P(X <= counted) when the whole holds `whole` moths.
double chanceOfSoFew(std::int64_t counted, std::int64_t whole, double fraction)
{
    if (whole == counted) return 1.0;
    return boost::math::ibetac(
        static_cast<double>(counted + 1), static_cast<double>(whole - counted), fraction, NoThrow());
}

// The first whole from `from` on for which `holds`, which is false first and stays true after.
// The search ends far above every bound that a whole of the largest size can have.
template <typename Predicate>
std::int64_t firstWhole(std::int64_t from, Predicate holds)
{
    if (holds(from)) return from;
    std::int64_t fails = from;
    std::int64_t step = 1;
    while (step < 64 * mostMoths && !holds(fails + step)) {
        fails += step;
        step *= 2;
    }
    std::int64_t works = fails + step;
    while (works - fails > 1) {
        const std::int64_t middle = fails + (works - fails) / 2;
        (holds(middle) ? works : fails) = middle;
    }
    return works;
}

} // namespace

Result<HeavyCatch> estimateHeavyCatch(std::span<const VolumePart> parts, Microlitres whole)
{
    const auto pooled = pool(parts, whole);
    if (!pooled) return pooled.error();
    return estimate(*pooled, volumeError);
}

Result<HeavyCatch> estimateHeavyCatch(std::span<const WeightPart> parts, Milligrams whole)
{
    const auto pooled = pool(parts, whole);
    if (!pooled) return pooled.error();
    return estimate(*pooled, balanceError);
}

Result<SpreadEstimate> estimateFromSpread(std::span<const VolumePart> parts, Microlitres whole)
{
    return spreadAlone(pool(parts, whole));
}

Result<SpreadEstimate> estimateFromSpread(std::span<const WeightPart> parts, Milligrams whole)
{
    return spreadAlone(pool(parts, whole));
}

Result<MothRange> perfectMixingRange(Moths counted, double fraction)
{
    if (!(fraction > 0.0) || fraction > 1.0) return partTooLarge;
    const std::int64_t x = counted.value();
    if (x < 0 || static_cast<double>(x) / fraction > static_cast<double>(mostMoths)) return tooMany();
    if (fraction == 1.0) return MothRange{counted, counted};
    if (x == 0) {
        const double high = highestWhenNoneCounted(fraction);
        if (high > static_cast<double>(mostMoths)) return tooMany();
        return MothRange{counted, rounded(high)};
    }
    const std::int64_t low =
        firstWhole(x, [&](std::int64_t whole) { return chanceOfSoMany(x, whole, fraction) > tailChance; });
    const std::int64_t beyond =
        firstWhole(x, [&](std::int64_t whole) { return !(chanceOfSoFew(x, whole, fraction) > tailChance); });
    return MothRange{Moths{low}, Moths{beyond - 1}};
}

} // namespace duskrow::domain
