// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

// Where the parts of a segment lie: magic, header length, header, form, payload, signature, length, hash.
namespace duskrow::sync {

inline constexpr std::string_view segmentMagic = "DSEG1\n";
inline constexpr std::size_t signatureBytes = 64;
inline constexpr std::size_t hashBytes = 32;
inline constexpr std::size_t tailBytes = signatureBytes + 8 + hashBytes;
inline constexpr std::size_t leastSegmentBytes = segmentMagic.size() + 4 + 1 + tailBytes;

// A number of so many bytes, the lowest first; `bytes` holds that many.
inline std::uint64_t readNumber(std::string_view bytes, std::size_t width)
{
    std::uint64_t number = 0;
    for (std::size_t i = width; i-- > 0;) number = (number << 8) | static_cast<std::uint8_t>(bytes[i]);
    return number;
}

inline void appendNumber(std::string& bytes, std::uint64_t number, std::size_t width)
{
    for (std::size_t i = 0; i < width; ++i) bytes += static_cast<char>((number >> (8 * i)) & 0xFF);
}

} // namespace duskrow::sync
