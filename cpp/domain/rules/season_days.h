// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/base/time.h"
#include "domain/protocol/trapping.h"

namespace duskrow::domain {

// The days of one whole season, both included.
struct SeasonDays {
    LocalDay first;
    LocalDay last;
};

// The season that a protocol lays down for a year: whole weeks from the first week day of its own on or after
// its earliest day. Nothing when the protocol does not know one of the three.
//
// Source  the protocol, "season"
std::optional<SeasonDays> seasonDaysOf(const SeasonPlan& plan, std::chrono::year year);

} // namespace duskrow::domain
