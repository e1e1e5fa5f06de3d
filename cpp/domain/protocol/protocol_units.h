// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "domain/base/units.h"

namespace duskrow::domain {

using SquareMetres = Quantity<struct SquareMetresTag, double>;
using Frames = Quantity<struct FramesTag, std::int64_t>;
using DegreesCelsius = Quantity<struct DegreesCelsiusTag, double>;
using DegreeDays = Quantity<struct DegreeDaysTag, double>; // of degrees Celsius
using Percent = Quantity<struct PercentTag, double>;
using Kilograms = Quantity<struct KilogramsTag, double>;
using BbchStage = Quantity<struct BbchStageTag, std::int64_t>;
using LarvaePerSquareMetre = Quantity<struct LarvaePerSquareMetreTag, double>;
using DollarsPerBushel = Quantity<struct DollarsPerBushelTag, double>;
using DollarsPerAcre = Quantity<struct DollarsPerAcreTag, double>;
using BushelsPerAcrePerLarva = Quantity<struct BushelsPerAcrePerLarvaTag, double>; // larva per square metre

} // namespace duskrow::domain
