// SPDX-License-Identifier: MIT
#include "formats/degrees.h"

#include <cmath>
#include <cstdlib>

namespace duskrow::formats {

std::string degreesText(std::int32_t e7)
{
    const long long whole = std::llabs(static_cast<long long>(e7));
    std::string decimals = std::to_string(whole % 10'000'000);
    decimals.insert(0, 7 - decimals.size(), '0');
    return (e7 < 0 ? "-" : "") + std::to_string(whole / 10'000'000) + "." + decimals;
}

std::string degreesLabel(double value, int decimals)
{
    std::string text = std::to_string(std::abs(std::llround(value * std::pow(10.0, decimals))));
    while (static_cast<int>(text.size()) <= decimals) text.insert(text.begin(), '0');
    if (decimals > 0) text.insert(text.size() - static_cast<std::size_t>(decimals), ".");
    if (value < 0) text.insert(0, "\u2212");
    return text.append("°");
}

} // namespace duskrow::formats
