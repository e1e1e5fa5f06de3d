// SPDX-License-Identifier: MIT
#pragma once

namespace duskrow::domain {

enum class HeatUnit { Celsius, Fahrenheit };

// How the course of a day's temperature is drawn between its minimum and its maximum.
enum class HeatMethod {
    Average, // the mean of both; a cut-off is applied to the mean
    AverageClamped, // both are brought within the limits first, then their mean is taken
    SingleTriangle,
    DoubleTriangle, // the second half of the day falls to the next day's minimum
    SingleSine,
    DoubleSine,
};

// What warmth above the upper limit does.
enum class CutOff {
    None, // counts as any other
    Horizontal, // counts as the limit does
    Intermediate, // takes as much away as it is above the limit
    Vertical, // while it is that warm nothing counts
};

} // namespace duskrow::domain
