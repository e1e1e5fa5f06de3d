// SPDX-License-Identifier: MIT
#include "domain/rules/walk_result.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace duskrow::domain {

namespace {

constexpr double cm2PerM2 = 10'000.0;

SquareMetres areaOf(const Walk& walk, const Protocol& protocol)
{
    return walk.frameCm2 ? SquareMetres{static_cast<double>(*walk.frameCm2) / cm2PerM2}
                         : frameAreaOf(protocol);
}

// Frames laid at a stop, on average: the plan is drawn for stops of this area.
double framesAtAStop(const FrameEstimate& estimate)
{
    if (estimate.stops == 0) return 1.0;
    return static_cast<double>(estimate.frames.value()) / static_cast<double>(estimate.stops);
}

// Nothing where no plan can be made for such a threshold: then the estimate stands alone.
std::optional<StopPlan> planFor(const Protocol& protocol, LarvaePerSquareMetre threshold, SquareMetres area)
{
    StopDesign design = stopDesignOf(protocol, threshold);
    design.areaOfAStop = area;
    const auto plan = planStops(design);
    return plan ? std::optional(*plan) : std::nullopt;
}

ControlFacts factsOf(const Walk& walk, const Decision* decision, const WalkResult& result, LocalDay today)
{
    ControlFacts facts;
    facts.today = today;
    if (walk.stageBbch) facts.stage = BbchStage{*walk.stageBbch};
    facts.larvae = result.sizes;
    facts.podsDamaged = result.podsDamaged;
    if (decision && decision->labelDays) facts.labelInterval = std::chrono::days{*decision->labelDays};
    if (decision) facts.cuttingDay = decision->cuttingDay;
    return facts;
}

FramesFinding findingOf(const WalkResult& result)
{
    FramesFinding finding;
    const FrameEstimate& estimate = result.estimate;
    switch (result.verdict) {
    case FrameVerdict::Below:
        finding.verdict = FramesVerdict::Below;
        break;
    case FrameVerdict::Above:
        finding.verdict = FramesVerdict::Above;
        break;
    case FrameVerdict::TooCloseToCall:
        finding.verdict = result.plan && estimate.stops < result.plan->design.fewest
            ? FramesVerdict::NotEnoughFrames
            : FramesVerdict::TooCloseToCall;
        break;
    }
    finding.frames = estimate.frames;
    finding.mean = estimate.mean;
    if (estimate.range) {
        finding.low = estimate.range->low;
        finding.high = estimate.range->high;
    }
    finding.probabilityAbove = estimate.probabilityAbove;
    finding.moreFrames = result.more;
    return finding;
}

} // namespace

ThresholdInput thresholdInput(const Decision& decision, const Walk& walk, const ScoutingAdvice* scouting)
{
    ThresholdInput input{.cost = {.sum = decision.costSum,
                             .product = decision.costProduct,
                             .application = decision.costApplication,
                             .wheelTracks = decision.costTracks},
        .costUnit = decision.costUnit,
        .price = decision.price,
        .priceUnit = decision.priceUnit,
        .drySeasonDivisor = decision.dryDivisor};
    const bool isUsual = scouting && scouting->frame.value && walk.frameCm2
        && std::llround(scouting->frame.value->value() * cm2PerM2) == *walk.frameCm2;
    if (!walk.frameCm2 || isUsual) return input;
    // Four decimals of a square metre are a square centimetre.
    const std::string digits = std::to_string(*walk.frameCm2 % 10'000);
    input.frameM2 =
        std::to_string(*walk.frameCm2 / 10'000) + "." + std::string(4 - digits.size(), '0') + digits;
    return input;
}

std::optional<int> stopsToGo(const StopPlan& plan, std::int64_t stops, Larvae total)
{
    const int most = plan.design.most;
    const auto made = static_cast<int>(std::min<std::int64_t>(stops, most));
    if (made >= most) return std::nullopt;
    const double mean =
        stops > 0 ? static_cast<double>(total.value()) / static_cast<double>(stops) : plan.thresholdAtAStop;
    const double drift = mean - plan.lines.slope;
    const double line = drift > 0 ? plan.lines.above : plan.lines.below;
    const double needed = std::abs(drift) > 0 ? line / drift : most;
    const double last =
        std::clamp(std::ceil(needed), static_cast<double>(plan.design.fewest), static_cast<double>(most));
    return std::max(1, static_cast<int>(last) - made);
}

Result<WalkResult> walkResult(const Protocol& protocol, const ThresholdRule& rule, const Walk& walk,
    std::span<const Frame> frames, const Decision* decision, const std::optional<Threshold>& threshold,
    LocalDay today)
{
    WalkResult result{.stops = frameStops(frames), .frame = areaOf(walk, protocol)};
    const auto estimate = estimateFrames(
        result.stops, result.frame, threshold ? std::optional(threshold->larvae) : std::nullopt);
    if (!estimate) return estimate.error();
    result.estimate = *estimate;
    result.threshold = threshold;
    const ScoutingAdvice* scouting = protocol.scouting ? &*protocol.scouting : nullptr;
    if (scouting) {
        if (const auto counts = sizesOf(*scouting, frames)) {
            const auto sizes = larvaeBySize(*scouting, *counts);
            if (!sizes) return sizes.error();
            if (sizes->looked > 0) result.sizes = *sizes;
        }
    }
    result.podsDamaged = podsDamagedOf(frames);
    const auto timing = controlTiming(rule, scouting, factsOf(walk, decision, result, today));
    if (!timing) return timing.error();
    result.timing = *timing;
    if (!threshold) return result;
    result.plan = planFor(
        protocol, threshold->larvae, SquareMetres{result.frame.value() * framesAtAStop(result.estimate)});
    if (result.plan) {
        const auto stops = result.estimate.stops;
        result.report = stopAfter(*result.plan, stops, result.estimate.larvae, result.estimate.dispersion);
        result.verdict = verdictOf(result.report.state, result.estimate);
        const bool isCalled = result.verdict != FrameVerdict::TooCloseToCall;
        if (const auto more =
                isCalled ? std::nullopt : stopsToGo(*result.plan, stops, result.estimate.larvae))
            result.more = Frames{*more};
    }
    result.decision = controlDecision(rule, *threshold, findingOf(result), result.timing);
    return result;
}

std::vector<std::vector<FrameVerdict>> verdictsOver(
    const ThresholdTable& table, const Protocol& protocol, const WalkResult& result)
{
    const SquareMetres area{result.frame.value() * framesAtAStop(result.estimate)};
    std::vector<std::vector<FrameVerdict>> verdicts;
    for (const auto& row : table.cells) {
        auto& across = verdicts.emplace_back();
        for (const ThresholdCell& cell : row) {
            const auto estimate = estimateFrames(result.stops, result.frame, cell.larvae);
            const auto plan = planFor(protocol, cell.larvae, area);
            const StopReport report = estimate && plan
                ? stopAfter(*plan, estimate->stops, estimate->larvae, estimate->dispersion)
                : StopReport{};
            across.push_back(
                estimate && plan ? verdictOf(report.state, *estimate) : FrameVerdict::TooCloseToCall);
        }
    }
    return verdicts;
}

} // namespace duskrow::domain
