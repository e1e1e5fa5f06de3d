// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "domain/rules/flight_posterior.h"
#include "formats/picture.h"

namespace duskrow::formats {

struct FanTick {
    double at = 0;
    std::string label;
};

// All words come translated. Points ascend; counts are in order and do not overlap. The axis is days or
// degree-days.
struct FlightFanInput {
    double width = 360;
    double height = 360;
    double textScale = 1; // 1 to 2
    double from = 0; // of the axis
    double to = 1;
    std::vector<domain::FanPoint> points = {};
    std::vector<domain::FlightInterval> counts = {}; // of one trap, or added up over the traps of a place
    std::optional<double> lastLook = {}; // from here on all is expected
    std::vector<FanTick> ticks = {};
    std::string lastLookLabel = {}; // "last count"
    std::string shareLabel = {}; // "of the flight is over"
    std::string mothsLabel = {}; // "moths caught"
    std::string emptyLabel = {}; // "No counts yet"
    std::string title = {};
    std::string description = {};
    std::function<std::string(std::int64_t)> number = {};
};

// How much of a flight is over: half of all chances as an inner band, nine in ten as an outer one, the middle
// as a line. What lies after the last count is hatched and its line dashed: it is expected, nobody has
// counted it. Below, on the same axis, a bar for each count, as wide as its nights and as high as its moths a
// night (or a degree-day), so that a missed week makes no peak.
//
// Nothing is drawn below 160 x 160, as while a screen has no size yet.
Picture flightFan(const FlightFanInput& input);

} // namespace duskrow::formats
