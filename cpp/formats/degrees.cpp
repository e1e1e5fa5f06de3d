// SPDX-License-Identifier: MIT
#include "formats/degrees.h"

#include <cstdlib>

namespace duskrow::formats {

std::string degreesText(std::int32_t e7)
{
    const long long whole = std::llabs(static_cast<long long>(e7));
    std::string decimals = std::to_string(whole % 10'000'000);
    decimals.insert(0, 7 - decimals.size(), '0');
    return (e7 < 0 ? "-" : "") + std::to_string(whole / 10'000'000) + "." + decimals;
}

} // namespace duskrow::formats
