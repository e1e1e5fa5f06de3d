// SPDX-License-Identifier: MIT
#include "domain/rules/frame_verdict.h"

namespace duskrow::domain {

namespace {

constexpr double leastChance = 2.0 / 3.0;

} // namespace

FrameVerdict verdictOf(StopState state, const FrameEstimate& estimate)
{
    if (!estimate.probabilityAbove) return FrameVerdict::TooCloseToCall;
    const double above = *estimate.probabilityAbove;
    if (state == StopState::Below && 1.0 - above >= leastChance) return FrameVerdict::Below;
    if (state == StopState::Above && above >= leastChance && estimate.standing == FrameStanding::Range)
        return FrameVerdict::Above;
    return FrameVerdict::TooCloseToCall;
}

} // namespace duskrow::domain
