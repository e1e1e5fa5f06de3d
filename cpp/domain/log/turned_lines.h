// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

// Lines of changes turned from rows into columns: what they have in common is written once, and what differs
// lies together, where it packs to half. FORMAT.md section 3.1 describes the bytes.
namespace duskrow::domain {

inline constexpr std::size_t mostTurnedLines = 5000;
inline constexpr std::size_t mostTurnedHoles = 65'536;

// lines  each ended by a line feed. Gives them as they are when turning would not make them smaller.
std::string turn(std::string_view lines);

bool isTurned(std::string_view content);

// The lines again. Needs no memory besides what it gives and some for each shape. Nothing when it is damaged,
// or comes to more than `most` bytes.
std::optional<std::string> turnBack(std::string_view turned, std::size_t most);

} // namespace duskrow::domain
