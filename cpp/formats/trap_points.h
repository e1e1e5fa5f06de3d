// SPDX-License-Identifier: MIT
#pragma once

#include "formats/formats.h"

namespace duskrow::formats {

// The traps of all seasons as points of a GeoJSON FeatureCollection, with what their season came to; without
// a geometry where nobody knows the place.
//
// Source  RFC 7946
domain::Result<std::vector<ExportedFile>> exportGeoJson(const ExportInput& input);

// The traps with a known place as waypoints, for receivers and maps.
//
// Errors  those of writeGpx
domain::Result<std::vector<ExportedFile>> exportGpx(const ExportInput& input);

} // namespace duskrow::formats
