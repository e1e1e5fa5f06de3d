// SPDX-License-Identifier: MIT
#pragma once

#include "domain/rules/frame_estimate.h"
#include "domain/rules/stop_rule.h"

namespace duskrow::domain {

// What a walk says of a field against a threshold, and no more: price, stage and timing are decided
// elsewhere.
enum class FrameVerdict { Below, Above, TooCloseToCall };

// The stop rule calls; the estimate may hold a call back.
//
// Below           the total has met the lower line, and the chance of a mean above the threshold is one in
//                 three or less
// Above           the total has met the upper line, that chance is two in three or more, and no single stop
//                 holds three quarters of all larvae: no treatment rests on one full frame
// TooCloseToCall  everything else: fewer stops than the plan's fewest, a total between the lines (whether
// more
//                 stops are wanted or the most are made), or a line met by counts too uneven to trust it
//
// Why both: the stop rule is what has known error rates (operatingTable), but only for fields as patchy as it
// was drawn for; the estimate knows how patchy this field is, but looked at after each stop it would call
// more often than it should. Since the estimate can only take a call away, no wrong call is more frequent
// than the table says. Two in three: in fields as patchy as planned a total that just meets a line at the
// last stop has a chance of about three in four and is to stand. Three quarters: five such stops come that
// near to one full frame in two walks of a hundred by chance alone. Both own choices.
FrameVerdict verdictOf(StopState state, const FrameEstimate& estimate);

} // namespace duskrow::domain
