// SPDX-License-Identifier: MIT
#include "formats/palette.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace duskrow::formats {

namespace {

struct Pair {
    std::uint32_t day;
    std::uint32_t night;
};

// In the order of Ink. The night's plum is lighter than the day's, which would sink into the card.
constexpr std::array<Pair, 18> colours{{
    {0x1C2138, 0xF6F1E3}, // Full
    {0x55586C, 0xB9BBCD}, // Soft
    {0xFBF7EC, 0x14182A}, // Paper
    {0xFFFFFF, 0x1F2442}, // Card
    {0xE4DCC8, 0x565B7A}, // Line
    {0xF4C430, 0xF4C430}, // Accent
    {0x1C2138, 0xF4C430}, // Curve
    {0xEADFC4, 0xEADFC4}, // Band1
    {0xE5B24A, 0xE5B24A}, // Band2
    {0xC25A2A, 0xC25A2A}, // Band3
    {0x6B1D44, 0x9C2F66}, // Band4
    {0xF8F4E9, 0x3C4062}, // Tint1
    {0xF7E8C8, 0x4A4345}, // Tint2
    {0xEDCDBF, 0x50343B}, // Tint3
    {0xD3BBC7, 0x4A2650}, // Tint4
    {0x726C99, 0xA49FC8}, // CatchBar
    {0xF4C430, 0xF4C430}, // Fan
    {0x8A836E, 0x9A9CB4}, // Unknown
}};
static_assert(colours.size() == static_cast<std::size_t>(Ink::Unknown) + 1);

double linear(std::uint8_t channel)
{
    const double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

double luminance(Rgb colour)
{
    return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
}

} // namespace

Rgb rgbOf(Ink ink, Light light)
{
    const Pair& pair = colours.at(static_cast<std::size_t>(ink));
    const std::uint32_t code = light == Light::Day ? pair.day : pair.night;
    return {static_cast<std::uint8_t>(code >> 16U), static_cast<std::uint8_t>(code >> 8U),
        static_cast<std::uint8_t>(code)};
}

std::string hexOf(Rgb colour)
{
    constexpr const char* digits = "0123456789abcdef";
    std::string text = "#";
    for (const unsigned channel : {colour.red, colour.green, colour.blue}) {
        text += digits[channel >> 4U];
        text += digits[channel & 0xFU];
    }
    return text;
}

Rgb mixed(Rgb over, Rgb under, double opacity)
{
    const auto mix = [opacity](std::uint8_t top, std::uint8_t ground) {
        return static_cast<std::uint8_t>(std::lround(top * opacity + ground * (1 - opacity)));
    };
    return {mix(over.red, under.red), mix(over.green, under.green), mix(over.blue, under.blue)};
}

double contrast(Rgb one, Rgb other)
{
    const auto [darker, lighter] = std::minmax({luminance(one), luminance(other)});
    return (lighter + 0.05) / (darker + 0.05);
}

} // namespace duskrow::formats
