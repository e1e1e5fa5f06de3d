// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "domain/rules/catch_intervals.h"

namespace duskrow::domain {

enum class FlightPhase {
    NotKnown, // nothing counted that gives a rate
    NoneYet, // counted, and no moth so far
    Rising, // the last rate is the highest
    NearHighest, // the last rate is half the highest or more
    PastHighest, // the last rate is below half the highest
};

struct HighestCatch {
    LocalDay from = {};
    LocalDay to = {};
    Moths caught = {};
    MothsPerNight rate;

    // The day taken for the peak: nobody knows which of these nights it was.
    [[nodiscard]] LocalDay middle() const { return from + (to - from) / 2; }
};

struct Flight {
    FlightPhase phase = FlightPhase::NotKnown;
    std::optional<HighestCatch> highest = {}; // nothing before the first moth
    std::optional<MothsPerNight> last = {};
};

// Where the flight seems to stand, from the rates of one trap alone; later counts may show a higher peak.
// Counts of a trap that failed say nothing here, nor do counts over fewer than three nights.
//
// Source  half of the highest, three nights: common practice, no source
Flight flightOf(std::span<const CatchStep> steps);

} // namespace duskrow::domain
