// SPDX-License-Identifier: MIT
#include "domain/rules/frame_estimate.h"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>

#include "domain/rules/boost_policy.h"
#include "domain/rules/mean_posterior.h"

namespace duskrow::domain {

namespace {

constexpr std::int64_t fewestForSpread = 3; // stops
constexpr std::int64_t fewestForRange = 5;
constexpr double widestRange = 10.0; // upper over lower end
constexpr double tail = 0.025;
constexpr double oneTail = 0.05;
constexpr double carefulDispersion = 0.5; // where no larva tells how patchy they are

std::optional<Error> refusalOf(SquareMetres frameArea, std::optional<LarvaePerSquareMetre> threshold)
{
    if (!(frameArea.value() >= 0.01 && frameArea.value() <= 10.0))
        return Error{ErrorCode::OutOfRange, {"frame_m2", "0.01", "10"}};
    if (threshold && !(threshold->value() >= 0.01 && threshold->value() <= 10'000.0))
        return Error{ErrorCode::OutOfRange, {"threshold_per_m2", "0.01", "10000"}};
    return std::nullopt;
}

LarvaePerSquareMetre perSquareMetre(LarvaePerFrame mean, SquareMetres frameArea)
{
    return LarvaePerSquareMetre{mean.value() / frameArea.value()};
}

// The mean per frame of which all stops are found empty with 5 % chance.
LarvaePerFrame boundWhenNoneFound(const FrameTally& tally)
{
    const double k = carefulDispersion;
    const auto stops = static_cast<double>(tally.stops);
    const double perStop = k * (std::pow(oneTail, -1.0 / (stops * k)) - 1.0);
    if (tally.isEven()) return LarvaePerFrame{perStop / tally.sizes.front().frames};
    const auto excess = [&](double mean) {
        double log = -std::log(oneTail);
        for (const FrameTally::Size& size : tally.sizes)
            log -= size.stops * k * std::log1p(size.frames * mean / k);
        return log;
    };
    // All stops as small as the smallest bound it from above, all as large as the largest from below.
    const double low = perStop / tally.sizes.back().frames;
    const double high = perStop / tally.sizes.front().frames;
    std::uintmax_t steps = 100;
    const auto isClose = [](double a, double b) { return b - a <= 1e-12 * b; };
    const auto found = boost::math::tools::toms748_solve(excess, low, high, isClose, steps, NoThrow());
    return LarvaePerFrame{found.second};
}

} // namespace

Result<FrameEstimate> estimateFrames(
    const FrameTally& tally, SquareMetres frameArea, std::optional<LarvaePerSquareMetre> threshold)
{
    if (const auto refusal = refusalOf(frameArea, threshold)) return *refusal;
    FrameEstimate estimate;
    estimate.stops = tally.stops;
    estimate.frames = tally.frames;
    estimate.larvae = tally.larvae;
    if (tally.stops == 0) return estimate;
    estimate.fullest = Larvae{std::llround(tally.counts.back().larvae)};
    const auto frames = static_cast<double>(tally.frames.value());
    estimate.meanPerFrame = LarvaePerFrame{static_cast<double>(tally.larvae.value()) / frames};
    estimate.mean = perSquareMetre(*estimate.meanPerFrame, frameArea);
    estimate.standing = FrameStanding::TooFewForSpread;
    if (tally.stops < fewestForSpread) return estimate;

    const MeanPosterior posterior(tally);
    estimate.dispersion = posterior.medianDispersion();
    if (threshold)
        estimate.probabilityAbove =
            posterior.probabilityAbove(LarvaePerFrame{threshold->value() * frameArea.value()});
    if (tally.larvae.value() == 0) {
        estimate.standing = FrameStanding::NoneFound;
        estimate.upperBound = perSquareMetre(boundWhenNoneFound(tally), frameArea);
        return estimate;
    }
    const DensityRange range{perSquareMetre(posterior.quantile(tail), frameArea),
        perSquareMetre(posterior.quantile(1.0 - tail), frameArea)};
    const bool isWide = range.high.value() > widestRange * range.low.value();
    estimate.range = range;
    estimate.standing =
        isWide || tally.stops < fewestForRange ? FrameStanding::TooFewForRange : FrameStanding::Range;
    return estimate;
}

Result<FrameEstimate> estimateFrames(
    std::span<const FrameStop> stops, SquareMetres frameArea, std::optional<LarvaePerSquareMetre> threshold)
{
    const auto tally = tallyOf(stops);
    if (!tally) return tally.error();
    return estimateFrames(*tally, frameArea, threshold);
}

Result<TextbookFigures> textbookFigures(std::span<const FrameStop> stops, SquareMetres frameArea)
{
    const auto tally = tallyOf(stops);
    if (!tally) return tally.error();
    if (const auto refusal = refusalOf(frameArea, std::nullopt)) return *refusal;
    if (tally->stops < 2) return Error{ErrorCode::TooFewParts};
    const auto n = static_cast<double>(tally->stops);
    const auto frames = static_cast<double>(tally->frames.value());
    const double mean = static_cast<double>(tally->larvae.value()) / frames;
    double squares = 0.0; // of what each stop differs from its share
    double framesSquared = 0.0;
    for (const FrameStop& stop : stops) {
        const auto own = static_cast<double>(stop.frames.value());
        const double difference = static_cast<double>(stop.larvae.value()) - mean * own;
        squares += difference * difference;
        framesSquared += own * own;
    }
    squares *= n / (n - 1.0);
    const double error = std::sqrt(squares) / frames;
    const boost::math::students_t_distribution<double, NoThrow> student(n - 1.0);
    const double reach = boost::math::quantile(student, 1.0 - tail) * error;

    TextbookFigures figures;
    figures.standardError = perSquareMetre(LarvaePerFrame{error}, frameArea);
    figures.tRange = {perSquareMetre(LarvaePerFrame{std::max(0.0, mean - reach)}, frameArea),
        perSquareMetre(LarvaePerFrame{mean + reach}, frameArea)};
    const double extra = squares - static_cast<double>(tally->larvae.value());
    if (extra > 0.0) figures.momentDispersion = mean * mean * framesSquared / extra;
    return figures;
}

SquareMetres frameAreaOf(const Protocol& protocol)
{
    if (!protocol.scouting) return usualFrameArea;
    return protocol.scouting->frame.value.value_or(usualFrameArea);
}

} // namespace duskrow::domain
