// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "formats/bulletin/document.h"

namespace duskrow::formats {

// Districts and published cells as a GeoJSON FeatureCollection: outer rings anticlockwise, at most six
// decimals, with its bounds. A district whose boundary nobody handed in has no geometry.
//
// Source  RFC 7946
std::string areaFeatures(const BulletinDocument& document);

} // namespace duskrow::formats
