// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>

#include "domain/rules/frame_estimate.h"
#include "domain/rules/frame_verdict.h"
#include "text/frame_text.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/frame_arguments.h"
#include "tool/json_values.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

struct FramesLine : FrameLine {
    std::vector<std::string> counts;
    std::string csv;
};

// The walk against a threshold, where one was given.
struct Against {
    StopPlan plan;
    StopReport report;
    FrameVerdict verdict = FrameVerdict::TooCloseToCall;
};

const char* code(FrameStanding standing)
{
    switch (standing) {
    case FrameStanding::NoFrames:
        return "no_frames";
    case FrameStanding::TooFewForSpread:
        return "too_few_for_spread";
    case FrameStanding::NoneFound:
        return "none_found";
    case FrameStanding::TooFewForRange:
        return "too_few_for_range";
    case FrameStanding::Range:
        return "range";
    }
    return "";
}

const char* code(StopState state)
{
    switch (state) {
    case StopState::GoOn:
        return "go on";
    case StopState::Below:
        return "below";
    case StopState::Above:
        return "above";
    case StopState::Undecided:
        return "undecided";
    }
    return "";
}

const char* code(FrameVerdict verdict)
{
    switch (verdict) {
    case FrameVerdict::Below:
        return "below";
    case FrameVerdict::Above:
        return "above";
    case FrameVerdict::TooCloseToCall:
        return "too close to call";
    }
    return "";
}

Result<std::vector<FrameStop>> stopsOf(const FramesLine& line)
{
    if (!line.csv.empty()) return stopsIn(line.csv);
    if (line.counts.empty()) return Error{ErrorCode::Empty, {"larvae"}};
    std::vector<FrameStop> stops;
    for (const std::string& typed : line.counts) {
        const auto larvae = wholeNumber(typed, "larvae", 0, mostLarvaeAtAStop);
        if (!larvae) return larvae.error();
        stops.push_back({Larvae{*larvae}});
    }
    return stops;
}

Json estimateJson(const FrameEstimate& estimate, SquareMetres frame, const std::optional<Against>& against)
{
    Json all{{"frames", estimate.frames.value()}, {"stops_made", estimate.stops},
        {"larvae", estimate.larvae.value()}, {"frame_m2", frame.value()},
        {"mean_per_frame", orNull(estimate.meanPerFrame)}, {"mean_per_m2", orNull(estimate.mean)},
        {"low_per_m2", estimate.range ? Json(estimate.range->low.value()) : Json()},
        {"high_per_m2", estimate.range ? Json(estimate.range->high.value()) : Json()},
        {"upper_bound_per_m2", orNull(estimate.upperBound)}, {"standing", code(estimate.standing)},
        {"dispersion_k", estimate.dispersion ? Json(*estimate.dispersion) : Json()},
        {"probability_above", estimate.probabilityAbove ? Json(*estimate.probabilityAbove) : Json()}};
    const auto put = [&](const char* key, auto value) { all[key] = against ? Json(value()) : Json(); };
    put("threshold_per_m2", [&] { return Json(against->plan.design.threshold.value()); });
    put("plan_dispersion_k", [&] { return Json(against->plan.design.dispersion); });
    put("below_up_to_larvae", [&] { return orNull(belowUpTo(against->plan, estimate.stops)); });
    put("above_from_larvae", [&] { return orNull(aboveFrom(against->plan, estimate.stops)); });
    put("stop", [&] { return Json(code(against->report.state)); });
    put("held_by_patchiness", [&] { return Json(against->report.isHeldByPatchiness); });
    put("verdict", [&] { return Json(code(against->verdict)); });
    return all;
}

Result<Done> say(
    const FrameEstimate& estimate, const std::optional<Against>& against, const Protocol& protocol)
{
    for (const QString& sentence : text::estimateSentences(estimate)) print(sentence);
    if (!against) return Done{};
    const LarvaePerSquareMetre threshold = against->plan.design.threshold;
    const QString chance = text::chanceSentence(estimate, threshold);
    if (!chance.isEmpty()) print(chance);
    print(text::stopSentence(against->plan, against->report, estimate));
    print(text::verdictSentence(against->verdict, against->report.state, threshold));
    if (const auto printed = printErrorRates(against->plan); !printed) return printed.error();
    printDecisionCautions(protocol);
    return Done{};
}

Result<int> sayFrames(const FramesLine& line)
{
    const auto protocol = protocolOf(line.pest, line.protocols);
    if (!protocol) return protocol.error();
    const auto stops = stopsOf(line);
    if (!stops) return stops.error();
    const auto tally = tallyOf(*stops);
    if (!tally) return tally.error();
    const auto frame = frameOf(line, *protocol);
    if (!frame) return frame.error();
    if (const auto dispersion = dispersionOf(line); !dispersion) return dispersion.error();

    std::optional<Against> against;
    std::optional<LarvaePerSquareMetre> threshold;
    if (!line.threshold.empty()) {
        const double framesAtAStop =
            static_cast<double>(tally->frames.value()) / static_cast<double>(tally->stops);
        const auto plan = planOf(line, *protocol, SquareMetres{frame->value() * framesAtAStop});
        if (!plan) return plan.error();
        against.emplace().plan = *plan;
        threshold = plan->design.threshold;
    }
    const auto estimate = estimateFrames(*tally, *frame, threshold);
    if (!estimate) return estimate.error();
    if (against) {
        against->report = stopAfter(against->plan, estimate->stops, estimate->larvae, estimate->dispersion);
        against->verdict = verdictOf(against->report.state, *estimate);
    }
    if (line.asJson) {
        print(QString::fromStdString(estimateJson(*estimate, *frame, against).dump(2)));
        return 0;
    }
    if (const auto said = say(*estimate, against, *protocol); !said) return said.error();
    return 0;
}

} // namespace

Work declareFrames(CLI::App& line)
{
    const auto typed = std::make_shared<FramesLine>();
    auto* counts = line.add_option("COUNT", typed->counts, "Larvae in each frame, one number a frame");
    line.add_option("--csv", typed->csv,
            "File of counts, one a row: a column “larvae”, and “frames” or “stop” where a stop has several")
        ->type_name("FILE")
        ->excludes(counts);
    line.add_option("--threshold", typed->threshold, "Your threshold in larvae per square metre")
        ->type_name("PER_M2");
    addFrameOptions(line, *typed);
    return [typed] { return sayFrames(*typed); };
}

} // namespace duskrow::tool
