// SPDX-License-Identifier: MIT
#pragma once

#include "app/round/round_stops.h"

namespace duskrow::app {

// Puts stops in the order to go, those without a place last. Without a position they stand by name, infested
// fields last where that is asked for.
void suggestOrder(RoundFound& found, const RoundAsk& ask);

// The way to a stop from the one before it, or from here to the first.
struct RoundWay {
    std::optional<domain::Course> course; // nothing without two places; its distance is by the metric
    bool isFromHere = false;
};

// One for each stop, in their order.
std::vector<RoundWay> waysAlong(const std::vector<RoundPlace>& stops,
    const std::optional<domain::GeoPoint>& here, domain::RoundMetric metric);

} // namespace duskrow::app
