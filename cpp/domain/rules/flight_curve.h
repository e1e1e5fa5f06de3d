// SPDX-License-Identifier: MIT
#pragma once

#include <array>

namespace duskrow::domain {

// The course of a flight over time or warmth: which part of it is over by a point of the axis.
enum class FlightShape { Normal, Logistic, Gamma16, Gamma4 };
inline constexpr std::array flightShapes{
    FlightShape::Normal, FlightShape::Logistic, FlightShape::Gamma16, FlightShape::Gamma4};

// All shapes have mean 0 and standard deviation 1; the gammas are shifted and lean to the late side by 0.5
// and 1.
//
// z  standard deviations after the mean
double partOver(FlightShape shape, double z); // 0 to 1
double medianOf(FlightShape shape); // z at which half is over
double modeOf(FlightShape shape); // z of the peak

// The point by which a part of the flight is over.
//
// part  above 0 and below 1
double pointAt(FlightShape shape, double part);

} // namespace duskrow::domain
