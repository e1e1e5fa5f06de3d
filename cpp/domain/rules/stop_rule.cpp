// SPDX-License-Identifier: MIT
#include "domain/rules/stop_rule.h"

#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <string>

#include "domain/rules/boost_policy.h"
#include "domain/rules/frame_estimate.h"

namespace duskrow::domain {

namespace {

constexpr double lowestThreshold = 1.0; // per square metre
constexpr int mostStopsOfAPlan = 200;
constexpr std::int64_t stopsBeforeGuard = 8;
constexpr double patchyShare = 0.5; // of the plan's dispersion
constexpr double farthestMean = 1000.0; // times the threshold

Error outside(const char* field, const std::string& low, const std::string& high)
{
    return {ErrorCode::OutOfRange, {field, low, high}};
}

std::optional<Error> refusalOf(const StopDesign& design)
{
    const double area = design.areaOfAStop.value();
    if (!(area >= 0.01 && area <= 100.0)) return outside("frame_m2", "0.01", "100");
    const double highest = std::floor(mostLarvaeOfAPlan / area);
    const double threshold = design.threshold.value();
    if (!(threshold >= lowestThreshold && threshold <= highest))
        return outside("threshold_per_m2", "1", std::to_string(std::llround(highest)));
    if (!(design.ratio >= 1.1 && design.ratio <= 4.0)) return outside("ratio", "1.1", "4");
    if (!(design.dispersion >= 0.2)) return outside("dispersion", "0.2", "1000");
    if (design.fewest < 1 || design.expected < design.fewest || design.most < design.expected
        || design.most > mostStopsOfAPlan)
        return outside("stops", "1", std::to_string(mostStopsOfAPlan));
    return std::nullopt;
}

// How much one larva weighs for the higher mean, and how much one stop weighs against it.
struct Evidence {
    double aLarva;
    double aStop;
};

Evidence evidence(double lowMean, double highMean, double k)
{
    const double difference = highMean - lowMean;
    if (std::isinf(k)) return {std::log(highMean / lowMean), difference};
    const double aStop = std::log1p(difference / (lowMean + k));
    return {std::log(highMean / lowMean) - aStop, k * aStop};
}

double slopeBetween(double lowMean, double highMean, double k)
{
    const Evidence both = evidence(lowMean, highMean, k);
    return both.aStop / both.aLarva;
}

// The higher mean for which the lines run along the threshold.
std::optional<double> centringMean(double lowMean, double threshold, double k)
{
    const auto excess = [&](double logMean) {
        return slopeBetween(lowMean, std::exp(logMean), k) - threshold;
    };
    const double low = std::log(threshold);
    const double high = std::log(threshold * farthestMean);
    if (!(excess(low) < 0.0 && excess(high) > 0.0)) return std::nullopt;
    std::uintmax_t steps = 100;
    const auto isClose = [](double a, double b) { return std::abs(b - a) < 1e-13; };
    const auto found = boost::math::tools::toms748_solve(excess, low, high, isClose, steps, NoThrow());
    return std::exp(0.5 * (found.first + found.second));
}

} // namespace

StopDesign stopDesignOf(const Protocol& protocol, LarvaePerSquareMetre threshold)
{
    StopDesign design;
    design.threshold = threshold;
    design.areaOfAStop = frameAreaOf(protocol);
    if (!protocol.scouting) return design;
    const auto stops = [](const Figure<Frames>& frames, int otherwise) {
        return frames.value ? static_cast<int>(frames.value->value()) : otherwise;
    };
    design.fewest = stops(protocol.scouting->framesFewest, design.fewest);
    design.expected = stops(protocol.scouting->framesExpected, design.expected);
    return design;
}

Result<StopLines> stopLines(
    double lowMean, double highMean, double dispersion, double falseAbove, double falseBelow)
{
    if (!(lowMean > 0.0 && highMean > lowMean && std::isfinite(highMean)))
        return outside("mean", "0.001", "100000");
    if (!(dispersion >= 0.001)) return outside("dispersion", "0.001", "1000");
    for (const double error : {falseAbove, falseBelow})
        if (!(error >= 0.05 && error <= 0.4)) return outside("error", "0.05", "0.4");
    const Evidence both = evidence(lowMean, highMean, dispersion);
    StopLines lines;
    lines.slope = both.aStop / both.aLarva;
    lines.below = std::log(falseBelow / (1.0 - falseAbove)) / both.aLarva;
    lines.above = std::log((1.0 - falseBelow) / falseAbove) / both.aLarva;
    lines.firstBelow = static_cast<int>(std::ceil(-lines.below / lines.slope));
    return lines;
}

Result<StopPlan> planStops(const StopDesign& design)
{
    if (const auto refusal = refusalOf(design)) return *refusal;
    StopPlan plan;
    plan.design = design;
    plan.thresholdAtAStop = design.threshold.value() * design.areaOfAStop.value();
    plan.lowMean = plan.thresholdAtAStop / design.ratio;
    const auto highMean = centringMean(plan.lowMean, plan.thresholdAtAStop, design.dispersion);
    if (!highMean) return outside("ratio", "1.1", "4");
    plan.highMean = *highMean;
    const auto lines =
        stopLines(plan.lowMean, plan.highMean, design.dispersion, design.falseAbove, design.falseBelow);
    if (!lines) return lines.error();
    plan.lines = *lines;
    plan.lines.slope = plan.thresholdAtAStop; // solved for; without its rounding error
    return plan;
}

std::optional<Larvae> belowUpTo(const StopPlan& plan, std::int64_t stops)
{
    if (stops < plan.design.fewest) return std::nullopt;
    const double total = std::floor(plan.lines.slope * static_cast<double>(stops) + plan.lines.below);
    if (total < 0.0) return std::nullopt;
    return Larvae{std::llround(total)};
}

std::optional<Larvae> aboveFrom(const StopPlan& plan, std::int64_t stops)
{
    if (stops < plan.design.fewest) return std::nullopt;
    return Larvae{std::llround(std::ceil(plan.lines.slope * static_cast<double>(stops) + plan.lines.above))};
}

StopReport stopAfter(const StopPlan& plan, std::int64_t stops, Larvae total, std::optional<double> dispersion)
{
    const bool isLast = stops >= plan.design.most;
    const auto above = aboveFrom(plan, stops);
    if (above && total >= *above) return {StopState::Above};
    const auto below = belowUpTo(plan, stops);
    if (below && total <= *below) {
        const bool isPatchy = dispersion && *dispersion < patchyShare * plan.design.dispersion;
        if (isPatchy && !isLast && stops >= stopsBeforeGuard) return {StopState::GoOn, true};
        return {StopState::Below};
    }
    return {isLast ? StopState::Undecided : StopState::GoOn};
}

} // namespace duskrow::domain
