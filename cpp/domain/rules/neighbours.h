// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "domain/base/units.h"

namespace duskrow::domain {

struct Neighbour {
    std::size_t at = 0; // in the places given
    Metres distance; // over a sphere: at most 0.56 % from the ellipsoid
};

// The nearest other places around each place, nearest first; places at the same distance in their order.
//
// Sorted along the axis on which the places lie furthest apart, so that only a strip around each is looked
// at: 5,000 places over a region take a few milliseconds.
//
// atMost, within  how many around each, and how far off at most
std::vector<std::vector<Neighbour>> neighboursOf(
    std::span<const GeoPoint> places, std::size_t atMost, Metres within);

} // namespace duskrow::domain
