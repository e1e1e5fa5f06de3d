// SPDX-License-Identifier: MIT
#include "domain/rules/sample_size.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace duskrow::domain {

namespace {

constexpr double normalQuantile = 1.959963984540054; // of 97.5 %
// A hair above a whole number by rounding alone is that whole number.
constexpr double rounding = 1e-9;

Error outside(const char* field, const char* low, const char* high)
{
    return {ErrorCode::OutOfRange, {field, low, high}};
}

std::optional<Error> refusalOf(LarvaePerFrame mean, double precision)
{
    if (!(mean.value() >= 0.001 && mean.value() <= 100'000.0)) return outside("mean", "0.001", "100000");
    if (!(precision >= 0.01 && precision <= 1.0)) return outside("precision", "0.01", "1");
    return std::nullopt;
}

std::optional<Error> refusalOf(Clumped scatter)
{
    if (!(scatter.dispersion >= 0.001)) return outside("dispersion", "0.001", "1000");
    return std::nullopt;
}

// relativeVariance  variance of one frame over the square of the mean
Frames framesOf(double relativeVariance, double precision)
{
    const double frames = relativeVariance / (precision * precision);
    const double whole = std::ceil(frames * (1.0 - rounding));
    return Frames{std::max(fewestFrames, static_cast<std::int64_t>(whole))};
}

double relativeVariance(LarvaePerFrame mean, Clumped scatter)
{
    return 1.0 / mean.value() + 1.0 / scatter.dispersion;
}

} // namespace

Result<Frames> framesForPrecision(LarvaePerFrame mean, double precision, ByChance)
{
    if (const auto refusal = refusalOf(mean, precision)) return *refusal;
    return framesOf(1.0 / mean.value(), precision);
}

Result<Frames> framesForPrecision(LarvaePerFrame mean, double precision, Clumped scatter)
{
    if (const auto refusal = refusalOf(mean, precision)) return *refusal;
    if (const auto refusal = refusalOf(scatter)) return *refusal;
    return framesOf(relativeVariance(mean, scatter), precision);
}

Result<Frames> framesForPrecision(LarvaePerFrame mean, double precision, PowerLaw scatter)
{
    if (const auto refusal = refusalOf(mean, precision)) return *refusal;
    if (!(scatter.factor >= 0.01 && scatter.factor <= 100.0)) return outside("factor", "0.01", "100");
    if (!(scatter.exponent >= 0.0 && scatter.exponent <= 3.0)) return outside("exponent", "0", "3");
    return framesOf(scatter.factor * std::pow(mean.value(), scatter.exponent - 2.0), precision);
}

Result<Frames> framesForHalfWidth(LarvaePerFrame mean, double halfWidth, Clumped scatter)
{
    if (const auto refusal = refusalOf(mean, halfWidth)) return *refusal;
    if (const auto refusal = refusalOf(scatter)) return *refusal;
    return framesOf(relativeVariance(mean, scatter), halfWidth / normalQuantile);
}

Result<double> precisionOf(Frames frames, LarvaePerFrame mean, Clumped scatter)
{
    if (frames.value() < 1 || frames.value() > 10'000) return outside("frames", "1", "10000");
    if (const auto refusal = refusalOf(mean, 1.0)) return *refusal;
    if (const auto refusal = refusalOf(scatter)) return *refusal;
    return std::sqrt(relativeVariance(mean, scatter) / static_cast<double>(frames.value()));
}

} // namespace duskrow::domain
