// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/time.h"

namespace duskrow::demo {

// What a receiver writes while it stands at a place: an RMC and a GGA sentence for each fix, four seconds
// apart, from half past one in the afternoon (UTC) of a day.
std::string nmeaLog(domain::LocalDay day, const domain::GeoPoint& place, int fixes);

} // namespace duskrow::demo
