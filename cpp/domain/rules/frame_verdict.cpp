// SPDX-License-Identifier: MIT
#include "domain/rules/frame_verdict.h"

namespace duskrow::domain {

namespace {

constexpr double leastChance = 2.0 / 3.0;
constexpr double mostAtOneStop = 0.75; // of all larvae

} // namespace

FrameVerdict verdictOf(StopState state, const FrameEstimate& estimate)
{
    if (!estimate.probabilityAbove) return FrameVerdict::TooCloseToCall;
    const double above = *estimate.probabilityAbove;
    if (state == StopState::Below && 1.0 - above >= leastChance) return FrameVerdict::Below;
    const double mostThere = mostAtOneStop * static_cast<double>(estimate.larvae.value());
    const bool isOneFullStop = static_cast<double>(estimate.fullest.value()) >= mostThere;
    if (state == StopState::Above && above >= leastChance && !isOneFullStop) return FrameVerdict::Above;
    return FrameVerdict::TooCloseToCall;
}

} // namespace duskrow::domain
