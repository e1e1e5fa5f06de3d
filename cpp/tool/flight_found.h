// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>
#include <optional>

#include "domain/rules/flight_prior.h"
#include "tool/trap_results.h"

namespace duskrow::tool {

// What is expected of a flight, from the protocol and the past seasons of the store.
//
// Errors  those of reading the store; Empty {"flight_model"} where the protocol has none
domain::Result<domain::PriorOfPast> priorFor(store::Reader& reader, const domain::Protocol& protocol,
    const std::string& trapType, std::chrono::year year, domain::LocalDay today);

// The latest end of any interval, else the day asked.
double lastLook(std::span<const domain::TrapFlight> traps, double otherwise);

// "early", "around_peak", "past_peak", "cannot_tell"
const char* codeOf(domain::FlightStage stage);

// Days of a range on the axis of days.
nlohmann::ordered_json dayRangeJson(const domain::ChanceRange& range, std::chrono::year year);
// A posterior on the axis of days, without the part that is over unless it is a range.
nlohmann::ordered_json flightJson(const domain::FlightPosterior& flight, std::chrono::year year);

// The course of warmth at the station nearest to a place, by the protocol's terms. Nothing without a station,
// temperatures, or terms in the protocol.
struct HeatThere {
    domain::HeatCourse course;
    std::string station;
};
domain::Result<std::optional<HeatThere>> heatAt(store::Reader& reader, const domain::Protocol& protocol,
    const domain::GeoPoint& place, std::chrono::year year);

} // namespace duskrow::tool
