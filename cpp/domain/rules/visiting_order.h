// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "domain/base/result.h"
#include "domain/base/units.h"
#include "domain/rules/path_search.h"

namespace duskrow::domain {

inline constexpr std::size_t mostRoundStops = 1000;

enum class RoundMetric {
    StraightLine, // over the ellipsoid
    SurveyGrid, // north-south and east-west, as roads run where land was surveyed in squares
};

struct RoundStop {
    GeoPoint place;
    bool isInfested = false; // soil and larvae on boots and wheels go from here to the next field
};

struct RoundSettings {
    RoundMetric metric = RoundMetric::StraightLine;
    bool infestedLast = true; // all infested fields after all others
    PathEnd end = PathEnd::Anywhere;
    std::size_t restarts = 20; // up to 150 stops; beyond that the local search runs once
    std::uint64_t seed = 1;
};

// The way to one stop from the one before, or from where the round begins.
struct RoundLeg {
    std::size_t stop; // its place in what was handed in
    Metres distance; // by the metric
    std::optional<Degrees> bearing; // of the straight line; nothing when both are the same place
};

// A suggestion: no road, gate or slough is known here.
struct Round {
    std::vector<RoundLeg> legs; // every stop once
    Metres length; // the way back included where the round ends at its start
    Metres nearestLength; // of always going to the nearest stop next; never shorter
    bool isShortest = false; // by this metric, proven for a dozen stops or fewer
};

// A short order of stops from here. The order in which they are handed in does not matter: stops at the same
// place apart, the same stops give the same round.
//
// Errors  OutOfRange {"stops", 0, mostRoundStops}
Result<Round> visitingOrder(
    GeoPoint from, std::span<const RoundStop> stops, const RoundSettings& settings = {});

// Between two places by a metric.
Metres roundDistance(GeoPoint a, GeoPoint b, RoundMetric metric);

} // namespace duskrow::domain
