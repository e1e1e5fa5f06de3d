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

// One entry of a key after another, as many side by side as have room.
class KeyRows {
public:
    KeyRows(Picture& picture, const Frame& below, double top, double small)
        : m_picture(picture), m_below(below), m_small(small), m_x(below.left), m_y(top)
    {
    }

    // Makes room for a sign and its words, and says where the sign goes.
    Frame next(const std::string& label);
    [[nodiscard]] double bottom() const { return m_y + m_small * 1.8; }

private:
    Picture& m_picture;
    Frame m_below;
    double m_small;
    double m_x;
    double m_y;
};

// The scale bar and the key below the map.
//
// below    its left, right and upper edge
// Returns  how far down it reaches
double drawMapKey(Picture& picture, const RegionMapInput& input, const Frame& below, double size,
    double small, double pixelsPerMetre);

} // namespace duskrow::formats
