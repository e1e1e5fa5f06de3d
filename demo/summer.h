// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "demo/dice.h"

namespace duskrow::demo {

// An invented summer: its warmth day by day, and what the moths and the crop make of it.
class Summer {
public:
    Summer(int year, Dice dice);

    // Degree-days above 7 C since 1 April, up to the morning of a day.
    [[nodiscard]] double degreeDays(domain::LocalDay day) const;

    // The part of the whole flight that is over on the morning of a day, 0 to 1.
    [[nodiscard]] double flightOver(domain::LocalDay day) const;

private:
    domain::LocalDay m_first;
    std::vector<double> m_degreeDays; // on the morning of each day from the first
};

// How tall the crop stands in the field of a trap on a day.
struct Crop {
    double fullHeightMm = 1150;
    domain::LocalDay halfGrown;

    [[nodiscard]] domain::Millimetres canopy(domain::LocalDay day) const; // to 5 cm, as people read it
};

} // namespace duskrow::demo
