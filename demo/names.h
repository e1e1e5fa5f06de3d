// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace duskrow::demo {

inline constexpr std::string_view valleyName = "Orrowin Valley";
inline constexpr std::string_view valleyRegion = "An invented valley: no such place, fields or people";
inline constexpr std::array<std::string_view, 5> districtNames{
    "Upper Orrowin", "Lower Orrowin", "Kestrow Flats", "Dunmarl", "Sillet Hills"};

// The present fields of the grower whose phone is shown; nobody else's are called so.
inline constexpr std::array<std::string_view, 3> growersSites{
    "Slough corner", "Poplar bend", "North quarter"};

// A person's name put together from syllables. Two numbers below 30,000 never give the same name.
std::string personName(std::uint64_t seed, std::size_t number);

// What a field corner is called. Two numbers never give the same name within a seed.
std::string siteName(std::uint64_t seed, std::size_t number);

} // namespace duskrow::demo
