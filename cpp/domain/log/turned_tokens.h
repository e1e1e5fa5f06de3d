// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace duskrow::domain {

inline constexpr char turnedMark = 1; // no line begins so
inline constexpr char sameForAll = 0; // how a column begins
inline constexpr char oneEach = 1;

// What stands in the place of a value in a shape; each is a byte that no line holds.
enum class Hole : char {
    Number = 1, // a whole number of 64 bits
    Id = 2, // a UUID: 16 bytes
    Stream = 3, // 32 hex digits: 16 bytes
    Hash = 4, // 64 hex digits: 32 bytes
    Text = 5, // what stands between quotes
};

inline bool isHole(char byte)
{
    return byte >= static_cast<char>(Hole::Number) && byte <= static_cast<char>(Hole::Text);
}

// Bytes of one value; 0 where they vary.
inline std::size_t widthOf(Hole hole)
{
    if (hole == Hole::Hash) return 32;
    return hole == Hole::Id || hole == Hole::Stream ? 16 : 0;
}

struct Cell {
    Hole hole{};
    std::int64_t number = 0;
    std::string_view text; // into the line
};

// Splits a line into its shape and the values that were in it, so that putting them back gives the line.
void splitLine(std::string_view line, std::string& shape, std::vector<Cell>& cells);

// The same for a line of this shape, much quicker. False when it has another one, or may have.
bool splitAlike(std::string_view line, std::string_view shape, std::vector<Cell>& cells);

} // namespace duskrow::domain
