// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "domain/records/walk.h"
#include "domain/rules/control_decision.h"
#include "domain/rules/frame_verdict.h"
#include "domain/rules/walk_stops.h"

namespace duskrow::domain {

// All that is said of one walk: larvae, threshold, when to stop, timing, verdict.
struct WalkResult {
    std::vector<FrameStop> stops;
    SquareMetres frame; // of this walk
    FrameEstimate estimate = {};
    std::optional<Threshold> threshold = {}; // where money was said
    std::optional<StopPlan> plan = {}; // with a threshold that one can be made for
    StopReport report = {};
    FrameVerdict verdict = FrameVerdict::TooCloseToCall;
    std::optional<Frames> more = {}; // that would probably settle it, while it pays to go on
    std::optional<LarvaeBySize> sizes = {};
    std::optional<Percent> podsDamaged = {};
    ControlTiming timing = {};
    std::optional<ControlDecision> decision = {}; // with a threshold
};

// What a decision record says of money.
ThresholdInput thresholdInput(const Decision& decision, const Walk& walk, const ScoutingAdvice* scouting);

// Stops that would probably bring the total to a line, if the field goes on as it was so far; the rest of the
// plan where it lies between. At least 1, nothing when the plan is at its end.
std::optional<int> stopsToGo(const StopPlan& plan, std::int64_t stops, Larvae total);

// A walk held against a threshold on a day. Frames withdrawn are not handed in.
//
// decision   money as typed, the label, the cutting day; null before anything was said
// threshold  of the money; nothing before a sum and a price are said
// Errors     as estimateFrames and controlTiming
Result<WalkResult> walkResult(const Protocol& protocol, const ThresholdRule& rule, const Walk& walk,
    std::span<const Frame> frames, const Decision* decision, const std::optional<Threshold>& threshold,
    LocalDay today);

// What the same frames would say of other money: the verdict at each cost and price of a table, as
// [cost][price]. The cell of the user's own point is the walk's own verdict.
std::vector<std::vector<FrameVerdict>> verdictsOver(
    const ThresholdTable& table, const Protocol& protocol, const WalkResult& result);

} // namespace duskrow::domain
