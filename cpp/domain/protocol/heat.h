// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <string>
#include <vector>

#include "domain/base/heat_method.h"
#include "domain/protocol/figure.h"

namespace duskrow::domain {

enum class SumAfter {
    Start, // the day on which the protocol begins to sum
    FirstCatch, // the first moth of the trap
};

// A sum of warmth at which something happens.
struct HeatSum {
    std::string id; // "first-moths", "peak", "hatch" and "damaging-larvae" are known to the calendar
    LocalText name;
    SumAfter after = SumAfter::Start;
    Figure<double> degreeDays; // of the unit of the section
};

// How a pest's warmth is summed. Temperatures and sums are of `unit`, as their source printed them.
struct HeatModel {
    HeatUnit unit = HeatUnit::Celsius;
    Figure<HeatMethod> method;
    Figure<double> lower;
    Figure<double> upper; // no value: no upper limit
    Figure<CutOff> cutOff;
    Figure<std::chrono::month_day> start; // no value: summed from the first catch only
    std::vector<HeatSum> sums;
};

// What is known of a flight's curve before anything is caught; past seasons of the programme go before it.
struct FlightModel {
    Figure<std::chrono::month_day> median; // half of the flight is over
    Figure<double> medianSpreadDays; // standard deviation between years and places
    Figure<double> widthDays; // standard deviation of one flight in time, the middle one
    Figure<double> widthLogSpread; // of its logarithm
    Figure<double> dispersion; // k of the negative binomial of one trap's counts, the middle one
    Figure<double> dispersionLogSpread;
};

// How long a crop takes to a stage or to its cutting, counted from seeding.
struct CropDays {
    std::string id; // of a growth stage of the crop, or "cutting"
    std::string crop;
    Range<std::chrono::days> afterSeeding;
};

inline constexpr const char* cuttingOfCrop = "cutting";

} // namespace duskrow::domain
