// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/base/result.h"

namespace duskrow::formats {

// Degrees, as a file gives them.
struct LonLat {
    double longitude = 0;
    double latitude = 0;

    bool operator==(const LonLat&) const = default;
};

using Ring = std::vector<LonLat>; // four positions or more, the last like the first
using Polygon = std::vector<Ring>; // the outer ring first, then its holes

// A named area, such as a district.
struct OverlayArea {
    std::string name; // may be empty
    std::vector<Polygon> polygons;
};

struct Overlay {
    std::vector<OverlayArea> areas;
    std::vector<std::vector<LonLat>> lines; // roads, rivers
};

// Areas and lines of a GeoJSON file that a coordinator hands in. A feature's name is its member "name" or
// "district", in large or small letters. Points and features without geometry are passed over.
//
// text    at most 16 MiB and 400,000 positions
// Errors  FileUnreadable {"GeoJSON"}, what is wrong in its detail: no GeoJSON, too large, a ring that is not
// closed, degrees beyond
//         the earth
// Source  RFC 7946
domain::Result<Overlay> readOverlay(std::string_view text);

// The area of a name, large and small letters of ASCII alike; null without one.
const OverlayArea* areaNamed(const Overlay& overlay, std::string_view name);

} // namespace duskrow::formats
