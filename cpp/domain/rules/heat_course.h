// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "domain/rules/degree_days.h"

namespace duskrow::domain {

enum class HeatSource {
    Measured,
    Interpolated, // a gap of one or two days, in a straight line
    Expected, // the mean of the same days of past years at the same station
};

struct HeatPoint {
    LocalDay day = {};
    double degreeDays = 0.0;
    double total = 0.0; // up to and with this day
    double low = 0.0; // the same, by the coolest and warmest of the past years: nine of ten lie between them
    double high = 0.0; //   where there are ten or more; equal to the total while all is measured
    HeatSource source = HeatSource::Measured;
};

struct DayGap {
    LocalDay first = {};
    LocalDay last = {}; // included

    [[nodiscard]] long length() const { return (last - first).count() + 1; }
};

inline constexpr long longestBridged = 2; // days

// Measured days with short gaps bridged: one after the other, still with holes where more is missing.
struct BridgedDays {
    std::vector<DayTemperature> days;
    std::vector<LocalDay> interpolated;
    std::vector<DayGap> gaps; // longer than what is bridged
};

// measured  ascending, no day twice
BridgedDays bridged(std::span<const DayTemperature> measured);

// How warmth adds up over a year.
struct HeatCourse {
    std::vector<HeatPoint> points; // a day each, without a gap, from the start on
    std::vector<DayGap> gaps; // of this year, longer than two days, before the last measured day
    std::optional<LocalDay> measuredUntil;
    std::size_t pastYears = 0; // that the expectation rests on
    bool isAtLeast = false; // days are missing that nothing stands in for: the total leaves them out

    // The first day on which the total reaches a sum, by the middle and by the band; nothing where the course
    // ends before.
    struct Reached {
        std::optional<LocalDay> earliest;
        std::optional<LocalDay> middle;
        std::optional<LocalDay> latest;
        bool isMeasured = false;
    };
    [[nodiscard]] Reached reaching(double sum) const;

    // The total by the end of a day; before the start it is 0, after the end the last.
    [[nodiscard]] double totalBy(LocalDay day) const;
};

// From a day of the year to a later one. Days after the last measured one, and long gaps, are filled with the
// mean of the same days in the past years of the station, and said so; the band is that of the sums of these
// years. Without past years the course ends with the last measured day.
//
// days  of one station, all years, ascending, no day twice; of the unit of the terms
HeatCourse heatCourse(
    const HeatTerms& terms, std::span<const DayTemperature> days, LocalDay from, LocalDay to);

} // namespace duskrow::domain
