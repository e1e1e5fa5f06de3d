// SPDX-License-Identifier: MIT
#include "formats/geo_uri.h"

#include <cmath>
#include <cstdlib>

#include "formats/degrees.h"

namespace duskrow::formats {

namespace {

constexpr std::int32_t poleE7 = 900'000'000;

std::string shortDegrees(std::int32_t e7)
{
    std::string text = degreesText(e7);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

} // namespace

std::string geoUri(domain::GeoPoint place, std::optional<domain::Metres> accuracy)
{
    const bool isPole = std::abs(place.latE7) == poleE7;
    std::string uri = "geo:" + shortDegrees(place.latE7) + "," + (isPole ? "0" : shortDegrees(place.lonE7));
    if (accuracy && accuracy->value() > 0.0 && accuracy->value() < 1e8)
        uri += ";u=" + std::to_string(static_cast<long long>(std::ceil(accuracy->value())));
    return uri;
}

} // namespace duskrow::formats
