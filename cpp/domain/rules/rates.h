// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/base/units.h"

namespace duskrow::domain {

// The same rate in the words other tables use; a day is a night here.
using MothsPerFiveNights = Quantity<struct MothsPerFiveNightsTag, double>;
using MothsPerWeek = Quantity<struct MothsPerWeekTag, double>;

// The catch of one trap over the nights since it was last emptied. Nothing without a night.
std::optional<MothsPerNight> ratePerNight(Moths caught, Nights nights);

MothsPerFiveNights perFiveNights(MothsPerNight rate);
MothsPerWeek perWeek(MothsPerNight rate);
MothsPerNight perNight(MothsPerFiveNights rate);
MothsPerNight perNight(MothsPerWeek rate);

} // namespace duskrow::domain
