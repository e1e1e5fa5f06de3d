// SPDX-License-Identifier: MIT
#include "formats/picture.h"

#include "formats/utf8.h"

namespace duskrow::formats {

std::vector<Point> outlineOf(const Mark& mark)
{
    const auto [x, y] = mark.at;
    const double half = mark.size / 2;
    if (mark.shape == MarkShape::Diamond) return {{x, y - half}, {x + half, y}, {x, y + half}, {x - half, y}};
    return {{x - half, y - half}, {x + half, y - half}, {x + half, y + half}, {x - half, y + half}};
}

double widthOf(std::string_view text, double size)
{
    constexpr double letter = 0.6;
    constexpr char32_t firstWide = 0x1100; // Hangul, then CJK, kana and the emoji planes
    double width = 0;
    while (!text.empty()) {
        const char32_t point = takeCodePoint(text);
        const bool isPunctuation = point >= 0x2000 && point < 0x2600;
        width += point >= firstWide && !isPunctuation ? 1.0 : letter;
    }
    return width * size;
}

Frame frameOf(const Words& words)
{
    constexpr double ascent = 0.8;
    constexpr double descent = 0.25;
    const double width = widthOf(words.text, words.size);
    double left = words.at.x;
    if (words.anchor == Anchor::Middle) left -= width / 2;
    if (words.anchor == Anchor::End) left -= width;
    return {left, words.at.y - ascent * words.size, left + width, words.at.y + descent * words.size};
}

} // namespace duskrow::formats
