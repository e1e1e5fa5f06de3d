// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "formats/palette.h"
#include "formats/picture.h"

namespace duskrow::formats {

struct SvgStyle {
    Light light = Light::Day;
    std::string fontFamily = "Inter, sans-serif";
    std::string language = "en"; // BCP 47
    // For a picture that stands in a page: no XML declaration, colours by the classes of inkClasses, ids that
    // begin with this. Empty for a document of its own.
    std::string inPage = {};
};

// Style rules for the classes of pictures in a page: .f0 fills with the first ink, .s0 draws with it.
std::string inkClasses(Light light);

// The picture as one SVG 1.1 document, UTF-8. The title and description carry the picture for those who
// cannot see it. A length that is no number is written as 0.
std::string writeSvg(const Picture& picture, const SvgStyle& style);

// Text as it stands between XML tags or in a quoted attribute. Characters that XML 1.0 forbids (control
// characters, U+FFFE, U+FFFF, bytes that are no UTF-8) become the replacement character.
std::string escapedXml(std::string_view text);

} // namespace duskrow::formats
