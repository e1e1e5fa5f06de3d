// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "domain/base/uuid.h"

namespace duskrow::domain {

// A visit by somebody who wrote it down himself: one that is typed in for another bears the time of typing.
struct StopMade {
    Uuid visit;
    Uuid trap;
    LocalDay day;
    Instant at;
    GeoPoint place; // of the trap
};

// Stops one after the other that follow faster than anybody drives.
struct HurriedStops {
    std::vector<StopMade> stops; // in their order
    Metres way; // by straight lines, so at least so far
    std::chrono::minutes taken{0}; // rounded down
    std::chrono::minutes driving{0}; // rounded up
};

// Every run of more than three traps in which each stop follows the one before in less time than 130 km/h
// takes over the straight line. Traps within 100 m of one another are one stop.
//
// stops   of one observer, in any order
// Source  three traps, 130 km/h, 100 m: own choice, no source
std::vector<HurriedStops> hurriedStops(std::vector<StopMade> stops);

} // namespace duskrow::domain
