// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "app/row_list.h"
#include "domain/protocol/protocol.h"
#include "domain/rules/due.h"
#include "store/trap_records.h"

namespace duskrow::app {

// What was done to a trap, newest first: set up, raised, lure, strip, moved, lent, ended. Each leads to its
// history.
std::vector<Row> timelineOf(const store::TrapRecords& records, bool hasStrip);

// How it was set up: a label and its value in each row.
std::vector<Row> setUpFacts(const store::TrapRecords& records, const domain::Protocol* protocol);

// What is left of taking a trap down whose season is over.
std::vector<domain::TakeDownStep> openSteps(const domain::Trap& trap, bool hasStrip);

// Where the trap stands now: set up there, or moved there since. `besides` is left out of the looking.
std::optional<domain::GeoPoint> placeNow(const store::TrapRecords& records, const domain::Uuid& besides = {});

} // namespace duskrow::app
