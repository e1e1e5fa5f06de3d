// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/rules/calendar_gaps.h"
#include "domain/rules/flight_axis.h"
#include "domain/rules/flight_prior.h"
#include "store/queries.h"

namespace duskrow::store {

// All of these grow with the store: not for the thread of the screens.

// What is expected of a flight, from the protocol and the past seasons of the store.
//
// Errors  those of reading the store; Empty {"flight_model"} where the protocol has none
domain::Result<domain::PriorOfPast> flightPrior(Reader& reader, const domain::Protocol& protocol,
    const std::string& trapType, std::chrono::year year, domain::LocalDay today);

// The course of warmth at the station nearest to a place, by the protocol's terms, up to the end of
// September.
struct HeatThere {
    domain::HeatStanding standing = domain::HeatStanding::NoPlace;
    domain::HeatCourse course = {}; // these where it is There
    std::string station = {};
    std::optional<int> dayEndsMinute = {}; // of the station's own day, where it was told

    [[nodiscard]] const domain::HeatCourse* get() const
    {
        return standing == domain::HeatStanding::There ? &course : nullptr;
    }
};

// place  nothing: NoPlace, unless the protocol has no terms
domain::Result<HeatThere> heatAt(Reader& reader, const domain::Protocol& protocol,
    const std::optional<domain::GeoPoint>& place, std::chrono::year year);

struct TrapOfSite {
    domain::Uuid trap = {};
    std::string trapType = {};
    std::optional<domain::LocalDay> setDay = {};
    domain::TrapFlight flight = {}; // on the axis of days
};

// The calendar of moth and crop at one site, with what it was made of.
struct SiteCalendar {
    std::chrono::year year{};
    std::vector<TrapOfSite> traps = {}; // of this pest and season, that stand
    std::optional<domain::PriorOfPast> prior = {}; // nothing where the protocol has no flight model
    std::optional<domain::FlightPosterior> flight = {}; // of all traps of the site, on the axis of days
    HeatThere heat = {};
    std::vector<domain::CalendarSpan> spans = {};
    std::vector<domain::CalendarGap> gaps = {};
};

// Errors  as in queries.h; those of the flight and of the protocol's terms of warmth
domain::Result<SiteCalendar> siteCalendar(Reader& reader, const domain::Season& season,
    const domain::Site& site, const domain::Protocol& protocol, domain::LocalDay today);

} // namespace duskrow::store
