// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "domain/base/time.h"
#include "domain/base/units.h"

namespace duskrow::domain {

using MillimetresPerDay = Quantity<struct MillimetresPerDayTag, double>;

enum class EntrancePosition { Above, AtCanopy, Below };

struct Clearance {
    Millimetres height; // entrance over canopy; negative when the crop stands over the entrance
    EntrancePosition position = EntrancePosition::AtCanopy;
};

Clearance clearanceOf(Millimetres entrance, Millimetres canopy);

struct CanopyHeight {
    LocalDay day;
    Millimetres canopy;
};

// Growth between the last two days with a height, in any order; of several heights of one day the last
// stands. May be negative when the crop lodged. Nothing with heights of one day only.
std::optional<MillimetresPerDay> canopyGrowth(std::span<const CanopyHeight> heights);

// The day on which the crop is likely to reach the entrance: an estimate, to be called so, that goes on from
// the last two heights in a straight line. Nothing without growth, when the crop stands there already, or
// when the day is over 60 days after the last height.
std::optional<LocalDay> dayCropReaches(Millimetres entrance, std::span<const CanopyHeight> heights);

struct StakeRange {
    Millimetres lowest;
    Millimetres highest;
};

struct RaiseSuggestion {
    Millimetres entrance; // where to set it, in steps of 5 cm, within the range of the stake
    bool fallsShort = false; // the stake is too short for what the crop asks
};

// Where to raise the entrance so that it stays over the crop until the next visit: 20 cm over the canopy or
// what grows until then, whichever is more (common practice, no source). Nothing when it stands high enough.
//
// interval  until the next visit
std::optional<RaiseSuggestion> suggestRaise(Millimetres entrance, Millimetres canopy,
    std::optional<MillimetresPerDay> growth, Nights interval, StakeRange stake);

} // namespace duskrow::domain
