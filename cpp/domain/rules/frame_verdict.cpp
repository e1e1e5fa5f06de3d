// SPDX-License-Identifier: MIT
#include "domain/rules/frame_verdict.h"

namespace duskrow::domain {

namespace {

constexpr double leastChance = 2.0 / 3.0;

} // namespace

FrameVerdict verdictOf(StopState state, std::optional<double> probabilityAbove)
{
    if (!probabilityAbove) return FrameVerdict::TooCloseToCall;
    if (state == StopState::Above && *probabilityAbove >= leastChance) return FrameVerdict::Above;
    if (state == StopState::Below && 1.0 - *probabilityAbove >= leastChance) return FrameVerdict::Below;
    return FrameVerdict::TooCloseToCall;
}

} // namespace duskrow::domain
