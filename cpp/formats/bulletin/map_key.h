// SPDX-License-Identifier: MIT
#pragma once

#include "formats/bulletin/region_map.h"
#include "formats/picture.h"
#include "formats/word_placer.h"

namespace duskrow::formats {

Ink bandInk(int level); // 1 to 4
Ink tintOf(int level);

// As many dots as the level, side by side on a ground of their own.
void drawDots(Picture& picture, Point middle, int level, double size);

// The scale bar and the key below the map.
//
// below    its left, right and upper edge
// Returns  how far down it reaches
double drawMapKey(Picture& picture, const RegionMapInput& input, const Frame& below, double size,
    double small, double pixelsPerMetre);

} // namespace duskrow::formats
