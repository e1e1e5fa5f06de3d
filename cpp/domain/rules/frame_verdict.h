// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/rules/stop_rule.h"

namespace duskrow::domain {

// What a walk says of a field against a threshold, and no more: price, stage and timing are decided
// elsewhere.
enum class FrameVerdict { Below, Above, TooCloseToCall };

// The stop rule calls, the range may hold the call back.
//
// Below, Above   the total has met a line of the plan, and the chance that the mean lies on that side of the
//                threshold is two in three or better
// TooCloseToCall everything else: fewer stops than the plan's fewest, a total between the lines (whether more
//                stops are wanted or the most are made), or counts so uneven that a met line means little, as
//                when one stop alone holds nearly all larvae
//
// Why both: the stop rule is what has known error rates (operatingTable), but only for fields as patchy as it
// was drawn for; the chance knows how patchy this field is, but taken alone and looked at after each stop it
// would call more often than it should. Since the chance can only take a call away, no wrong call is more
// frequent than the table says. Two in three, because a total that just meets a line at the last stop of a
// field as patchy as planned has a chance of about seven in ten; own choice.
//
// probabilityAbove  of FrameEstimate; without it nothing is called
FrameVerdict verdictOf(StopState state, std::optional<double> probabilityAbove);

} // namespace duskrow::domain
