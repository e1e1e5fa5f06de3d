// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>
#include <optional>

#include "domain/rules/flight_axis.h"
#include "store/site_calendar.h"
#include "tool/season_asked.h"

namespace duskrow::tool {

enum class Axis { Days, Warmth }; // "day", "degree-days"

struct OneFlight {
    std::string name;
    domain::FlightPosterior flight;
    std::string station = {}; // of the axis of warmth
    std::shared_ptr<const domain::HeatCourse> course = {}; // likewise
};

// The flights of a pest in one season, each trap and each district.
struct Flights {
    std::string pest;
    std::chrono::year year{};
    Axis axis = Axis::Days;
    domain::HeatUnit unit = domain::HeatUnit::Celsius; // of the axis of warmth
    std::size_t pastYears = 0;
    std::vector<OneFlight> traps = {};
    std::vector<OneFlight> districts = {};
    // Traps whose station has no temperatures, or none that reach over the flight: on the axis of warmth they
    // are left out.
    std::vector<std::string> withoutWarmth = {};
};

struct FlightAsked {
    SeasonAsked season;
    std::string pest;
    std::string trap; // empty: all
    std::string protocols;
    Axis axis = Axis::Days;
};

// Errors  those of lookAt, namedRecords, trapNamed, trapResults and store::site_calendar
domain::Result<Flights> flightsOfStore(const FlightAsked& asked);

// "early", "around_peak", "past_peak", "cannot_tell"
const char* codeOf(domain::FlightStage stage);

// All of it, without the part that is over unless it is a range.
nlohmann::ordered_json flightsJson(const Flights& flights);

} // namespace duskrow::tool
