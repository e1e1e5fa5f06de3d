// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>

namespace duskrow::formats {

// Tenths of a millionth of a degree as decimal degrees with all seven decimals: rounding is for whoever
// coarsens on purpose.
std::string degreesText(std::int32_t e7);

// Degrees on the edge of a map: "52.5°".
std::string degreesLabel(double value, int decimals);

} // namespace duskrow::formats
