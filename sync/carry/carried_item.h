// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

// What carried files and the answers of a hub are made of. FORMAT.md section 4.2 describes the bytes.
namespace duskrow::sync {

enum class ItemKind : char { Segment = 's', Photograph = 'p' };

inline constexpr std::string_view carriedMagic = "DUSK1\n";
inline constexpr char endLetter = 'i';
inline constexpr std::size_t itemHeadBytes = 9;
inline constexpr std::uint64_t mostCarriedSegmentBytes = std::uint64_t{2} << 20;
inline constexpr std::uint64_t mostPhotographBytes = std::uint64_t{16} << 20;
inline constexpr std::uint64_t mostEndBytes = 4096;

constexpr std::uint64_t mostItemBytes(ItemKind kind)
{
    return kind == ItemKind::Segment ? mostCarriedSegmentBytes : mostPhotographBytes;
}

// The letter and the length that stand before the bytes of an item.
std::string itemHead(char letter, std::uint64_t length);

} // namespace duskrow::sync
