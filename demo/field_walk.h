// SPDX-License-Identifier: MIT
#pragma once

#include "demo/trap_life.h"

namespace duskrow::demo {

// A field scouted for larvae after the flight, where the trap caught enough to make people look: a walk of
// some frames, and what it was held against. Fields of a hot spot differ, as they do.
//
// site  of the trap
std::vector<Entry> fieldWalk(const Story& story, const Common& common, const domain::Site& site, Dice dice);

} // namespace duskrow::demo
