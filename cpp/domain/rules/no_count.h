// SPDX-License-Identifier: MIT
#pragma once

#include "domain/records/visit.h"

namespace duskrow::domain {

// Forgets that a catch was estimated from a counted part.
void clearEstimate(Visit& visit);

// Says of a visit that the catch could not be counted: no number of it stays. What the reason lets one expect
// of the trap is set with it: its state, whether the catch was thrown out, whether the season is "at least"
// from now on. All of it can be changed afterwards.
//
// Source  common practice, no source
void sayCouldNotCount(Visit& visit, NoCountReason reason);

} // namespace duskrow::domain
