// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/base/result.h"
#include "domain/base/time.h"
#include "domain/base/units.h"

namespace duskrow::formats {

// Texts are in UTF-8, in any script; what XML cannot hold is replaced.
struct GpxPoint {
    domain::GeoPoint place;
    std::string name;
    std::string description = {};
};

// Points in the order they are to be visited.
struct GpxRoute {
    std::string name;
    std::string description = {};
    std::vector<GpxPoint> points = {};
};

struct Gpx {
    std::string name = {};
    std::string description = {};
    std::optional<domain::Instant> made = {};
    std::vector<GpxPoint> waypoints = {};
    std::vector<GpxRoute> routes = {};
};

// Waypoints and routes as the bytes of a .gpx file, for receivers and maps.
//
// Errors  OutOfRange {"latitude" or "longitude", ...} for a place that is none; OutOfRange {"year", ...} when
// it
//         was made in no year of four digits
// Source  GPX 1.1, topografix.com/GPX/1/1 (order of elements from memory): longitudes run from -180 up to,
// but
//         not including, 180
domain::Result<std::string> writeGpx(const Gpx& gpx);

} // namespace duskrow::formats
