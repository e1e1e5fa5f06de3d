// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/base/units.h"

namespace duskrow::formats {

// A place as a link that map programs open: "geo:52.157902,-106.670158;u=6".
//
// accuracy  of the place, said in whole metres rounded up; left out when it is not known or not above zero
// Source    RFC 5870: WGS84 unless said otherwise, latitude first; at a pole the longitude is 0
std::string geoUri(domain::GeoPoint place, std::optional<domain::Metres> accuracy = {});

} // namespace duskrow::formats
