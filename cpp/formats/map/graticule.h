// SPDX-License-Identifier: MIT
#pragma once

#include "domain/rules/regional_plane.h"
#include "formats/map/map_view.h"

namespace duskrow::formats {

// Parallels and meridians at round degrees with their degrees at the edge; as curved as the plane makes them.
void drawGraticule(
    const domain::RegionalPlane& plane, const MapView& view, double textScale, Picture& picture);

// A round length, in the lower left corner. True in the middle of the plane, and to one part in a thousand
// within 400 km of it.
void drawScaleBar(const MapView& view, double textScale, Picture& picture);

} // namespace duskrow::formats
