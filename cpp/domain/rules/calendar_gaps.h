// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/rules/pest_calendar.h"

namespace duskrow::domain {

// Whether there is a course of warmth for a place, or what it fails for.
enum class HeatStanding {
    There,
    NoTerms, // the protocol names no method, base temperature or start
    NoPlace, // no trap has a position
    NoStation, // none that has a position
    NoTemperatures, // of the nearest station
};

// What a calendar cannot say, or says less surely, and for want of what. Each has its way out in words.
enum class CalendarGap {
    NoHeatTerms,
    NoPlace,
    NoStation,
    NoTemperatures,
    NoneThisYear, // all warmth is that of past years
    DaysMissing, // longer gaps that nothing stands in for: the total is a minimum
    NoPastYears, // warmth ends with the last measured day
    NoSums, // nobody has published at what sum things happen
    NoFlightModel, // the protocol expects no flight, so that counts have no curve
    NoLarvaeDays, // neither a sum nor days from laying to damage
    NoCropDays, // of this crop, from seeding to its stages
    NoSeeding, // nobody has written down when the field was seeded
    NoCutting, // neither written down nor expected
    NoLabelDays, // before cutting: no last day for control
};

// In the order of the enum.
std::vector<CalendarGap> calendarGaps(const CalendarFacts& facts, HeatStanding heat);

} // namespace duskrow::domain
