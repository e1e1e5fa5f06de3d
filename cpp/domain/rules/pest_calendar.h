// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "domain/protocol/protocol.h"
#include "domain/rules/flight_posterior.h"
#include "domain/rules/heat_course.h"

namespace duskrow::domain {

enum class CalendarWhat {
    TrapsUp,
    FirstMoths,
    Peak,
    Hatch,
    Scouting, // the window in which to look for larvae
    DamagingLarvae,
    CropStage,
    Cutting,
    LastControl, // the last day on which the label allows control before cutting
};

// Why an entry lies where it lies.
enum class CalendarReason {
    Noted, // it was written down
    FirstCatch, // of these nights
    Counts, // the flight's curve through the counts
    FlightExpected, // what is expected of a flight before enough is counted
    HeatSum, // the sum of warmth that the protocol names
    ProtocolDays, // the days of the year that the protocol names
    AfterSetUp, // days after the traps were set up
    AfterPeak, // days after the peak of the flight, when most eggs are laid
    AfterSeeding, // days after seeding
    AfterStageSeen, // days after seeding, moved by the stage that was seen last
    BeforeCutting, // days of the label before cutting
};

// One thing on the strip. Its likely days lie within its widest ones.
struct CalendarSpan {
    CalendarWhat what = CalendarWhat::Peak;
    LocalDay earliest = {};
    LocalDay from = {};
    LocalDay to = {};
    LocalDay latest = {};
    bool isMeasured = false; // seen or counted; else expected
    CalendarReason reason = CalendarReason::Noted;
    std::string source = {}; // of the number behind it: an id of the protocol's sources, or a reserved one;
                             // empty where none is behind it
    std::string stage = {}; // of CropStage: id of the growth stage
    std::vector<std::int64_t> numbers = {}; // days of the lag from and to, where there are such
};

struct StageSeen {
    LocalDay day = {};
    BbchStage stage;
};

// What is known of one trap or site and its year. It only looks on.
struct CalendarFacts {
    const Protocol& protocol;
    std::chrono::year year{};
    LocalDay today = {};
    std::string crop = {}; // of the field; empty: the protocol's main one
    std::optional<LocalDay> setDay = {}; // the first trap
    std::optional<LocalDay> firstCatchFrom = {}; // the nights of the first moth
    std::optional<LocalDay> firstCatchTo = {};
    const FlightPosterior* flight = nullptr; // on the axis of days
    const HeatCourse* heat = nullptr; // by the terms of the protocol
    std::optional<LocalDay> seededDay = {};
    std::vector<StageSeen> stages = {}; // of this year, in any order
    std::optional<LocalDay> cuttingDay = {};
    std::optional<std::int64_t> labelDays = {};
};

// What happens when, in the order of the enum; what nothing is known of is left out.
//
// Source  every number is the protocol's; that a window of scouting lasts two weeks, and that eggs are laid
// about
//         the peak: common practice, no source
std::vector<CalendarSpan> pestCalendar(const CalendarFacts& facts);

} // namespace duskrow::domain
