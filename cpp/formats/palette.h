// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>

#include "formats/picture.h"

namespace duskrow::formats {

enum class Light { Day, Night };

struct Rgb {
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;

    constexpr bool operator==(const Rgb&) const = default;
};

Rgb rgbOf(Ink ink, Light light);

// "#1c2138"
std::string hexOf(Rgb colour);

// `over` laid on `under` at an opacity between 0 and 1.
Rgb mixed(Rgb over, Rgb under, double opacity);

// Contrast of two colours, 1 to 21.
//
// Source  Web Content Accessibility Guidelines 2.1, "contrast ratio" and "relative luminance", from memory
double contrast(Rgb one, Rgb other);

} // namespace duskrow::formats
