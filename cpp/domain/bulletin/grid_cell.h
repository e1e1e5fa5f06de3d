// SPDX-License-Identifier: MIT
#pragma once

#include <compare>
#include <cstdint>

#include "domain/base/units.h"

namespace duskrow::domain {

// A cell of the fixed grid on which places are published: a tenth of a degree each way, its corners at whole
// tenths counted from 0, 0. The grid never moves and is the same for everybody: a place that is blurred
// anew each time gives itself away by its mean.
//
// row     of the south edge, in tenths of a degree: -900 to 899
// column  of the west edge: -1800 to 1799
struct GridCell {
    std::int32_t row = 0;
    std::int32_t column = 0;

    auto operator<=>(const GridCell&) const = default;
};

// South and west edges belong to the cell, north and east edges to the next one; the pole to the cell below
// it, and 180 degrees east to the one of 180 degrees west.
//
// place  latitude -90 to 90, longitude -180 to 180
GridCell cellOf(GeoPoint place);

GeoPoint southWestOf(GridCell cell);
GeoPoint northEastOf(GridCell cell);
GeoPoint centreOf(GridCell cell); // what is published in the stead of the place

// From the centre to the corner that is farthest from it, over the WGS84 ellipsoid.
//
// Source  A. D. Chapman and J. R. Wieczorek, 2020, Georeferencing Best Practices (uncertainty of a grid cell
//         given by its centre), from memory
Metres halfDiagonalOf(GridCell cell);

// Within what distance of the centre the traps of a cell stand: its half diagonal and what the worst fix
// among them adds, rounded up to whole hundreds of metres so that no single fix shows.
//
// worstFix  0 or more
Metres uncertaintyOf(GridCell cell, Metres worstFix);

// What is taken for a fix that came without its accuracy. From memory, no source at hand: the usual figure
// for a receiver that does not tell.
inline constexpr Metres unknownFix{30};

} // namespace duskrow::domain
