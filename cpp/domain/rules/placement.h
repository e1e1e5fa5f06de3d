// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "domain/base/units.h"

namespace duskrow::domain {

// What a protocol wants a trap to keep its distance from.
enum class PlacementKind { FieldEdge, Farmyard, StrongLight, SamePestTrap, OtherPestTrap };

enum class PlacementDistance {
    Least, // at least so far
    About, // about so far: from half of it to twice it passes
};

struct PlacementRule {
    PlacementKind kind = PlacementKind::FieldEdge;
    PlacementDistance meant = PlacementDistance::Least;
    Metres distance;
};

struct PlacementMeasure {
    PlacementKind kind = PlacementKind::FieldEdge;
    Metres distance;
    Metres error; // of the distance; zero when paced or measured
};

enum class PlacementVerdict { Fits, TooClose, TooFar, NotKnown };

struct PlacementFinding {
    PlacementRule rule;
    std::optional<Metres> measured; // the nearest of its kind
    PlacementVerdict verdict = PlacementVerdict::NotKnown;
};

// One finding for each rule, in their order, to be said and never to block. A distance is called too close or
// too far only when its error leaves no doubt.
//
// measures  several of one kind, such as traps around, may be given: the nearest counts. Those that are
//           negative or not a number count as not measured.
std::vector<PlacementFinding> checkPlacement(
    std::span<const PlacementRule> rules, std::span<const PlacementMeasure> measures);

} // namespace duskrow::domain
