// SPDX-License-Identifier: MIT
#pragma once

#include "app/round/round_stops.h"
#include "formats/gpx.h"

namespace duskrow::app {

// The stops in their order as a route, and each as a waypoint; those without a place are left out.
formats::Gpx roundGpx(const std::vector<RoundPlace>& stops, domain::Moment made);

} // namespace duskrow::app
