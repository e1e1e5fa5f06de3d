// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "domain/base/result.h"
#include "domain/base/units.h"

namespace duskrow::domain {

// A place as people type it: decimal degrees with point or comma, or degrees, minutes and seconds parted by
// signs or blanks, with a sign in front or one of N S E W before or behind.
//     52.157902, -106.670158    52,157902 N    106° 40.2095' W    106 40 12.57 W
//
// Errors  NotAPlace when one of the two cannot be read; OutOfRange {latitude, longitude, minutes or seconds,
// ...};
//         TooLong {latitude or longitude, ...}
Result<GeoPoint> parsePlace(std::string_view latitude, std::string_view longitude);

} // namespace duskrow::domain
