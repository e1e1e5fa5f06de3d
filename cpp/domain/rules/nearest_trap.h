// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "domain/base/units.h"
#include "domain/base/uuid.h"

namespace duskrow::domain {

struct TrapPlace {
    Uuid id;
    GeoPoint place;
    Metres accuracy; // of the kept place; zero or not a number counts as exact
};

struct TrapNearby {
    Uuid id;
    Metres distance; // over the ellipsoid
    std::optional<Degrees> bearing; // nothing closer than twice the error, where it would only whirl
};

struct NearestTraps {
    std::vector<TrapNearby> byDistance; // nearest first: the first is the one to offer
    std::size_t notToldApart = 0; // how many, the first included, may be the one stood at

    [[nodiscard]] bool isAmbiguous() const { return notToldApart > 1; }
};

// The traps around a place, nearest first, at most so many. Another trap is not told apart from the nearest
// when it is no further off than the errors of the fix and of both places together (root of their squares).
//
// here, accuracy  the fix, as averageFixes gives it
NearestTraps nearestTraps(
    std::span<const TrapPlace> traps, GeoPoint here, Metres accuracy, std::size_t atMost = 20);

} // namespace duskrow::domain
