// SPDX-License-Identifier: MIT
#pragma once

#include "domain/protocol/protocol.h"
#include "domain/protocol/reading.h"

namespace duskrow::domain {

// Each fills its part of a protocol from the whole file, and says in `reading` what is wrong there.
void readTrapping(Reading& reading, const LocatedJson& file, Protocol& protocol);
void readFlight(Reading& reading, const LocatedJson& file, Protocol& protocol);
void readHeat(Reading& reading, const LocatedJson& file, Protocol& protocol); // after readTrapping
void readRules(Reading& reading, const LocatedJson& file, Protocol& protocol); // after readTrapping
void readScouting(Reading& reading, const LocatedJson& file, Protocol& protocol);

// Refuses steps that do not rise from 0 without a gap to one open at the top.
//
// steps  groups that each hold whole numbers under both keys; null under `belowKey` leaves it open
void checkSteps(Reading& reading, const std::vector<LocatedJson>& steps, std::string_view fromKey,
    std::string_view belowKey);

} // namespace duskrow::domain
