// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string_view>

namespace duskrow::domain {

// How a flight's phase is called in what is kept of bulletins, in the order of FlightPhase.
inline constexpr std::array<std::string_view, 5> phaseNames{
    "not_known", "none_yet", "rising", "near_highest", "past_highest"};

} // namespace duskrow::domain
