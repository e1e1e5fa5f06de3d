// SPDX-License-Identifier: MIT
#pragma once

#include "formats/map/region_scene.h"

namespace duskrow::formats {

// How large the signs are: whole where traps lie far apart, smaller where they crowd. 0.3 to 1.
double signScale(const RegionScene& scene, const MapView& view);

// The traps that are seen. Of those that another covers at this scale, the one on top alone.
void drawTrapSigns(const RegionScene& scene, const MapView& view, Picture& picture);

// One sign, as it stands in a key.
void drawTrapSign(TrapStanding standing, int level, Point at, double size, Picture& picture);

} // namespace duskrow::formats
