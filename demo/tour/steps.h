// SPDX-License-Identifier: MIT
#pragma once

#include "demo/tour/stage.h"

namespace duskrow::demo {

// The job in the field as the tour does it: each begins and ends at one of the places along the bottom.
void setUpATrap(Stage& stage);
void makeAVisit(Stage& stage);
void lookAtTheSeason(Stage& stage);
void scoutAField(Stage& stage);

} // namespace duskrow::demo
