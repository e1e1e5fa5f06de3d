// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <memory>

#include "store/site_calendar.h"

namespace duskrow::app {

// Over what a flight's curve is drawn.
enum class FlightAxis { Days, Warmth };

// One flight with what its picture and its sentences are made of. Days are numbers of the year.
struct FlightRead {
    domain::FlightPosterior posterior;
    FlightAxis axis = FlightAxis::Days;
    double from = 0; // of what is drawn
    double to = 0;
    std::vector<domain::FanPoint> fan = {};
    domain::TrapFlight counts = {}; // on the axis; of several traps those of the same nights together
    domain::ChanceRange first = {}; // a twentieth is over
    domain::ChanceRange last = {}; // nineteen twentieths are over
    bool isCounted = false; // there is any interval
    std::size_t traps = 1;
    std::size_t intervals = 0;
};

// All that the calendar of one trap's field shows, read and worked out away from the screens' thread.
struct CalendarBook {
    domain::Protocol protocol;
    domain::LocalDay today = {};
    domain::Trap trap;
    domain::Site site;
    QString district; // its name; empty where the field has none
    store::SiteCalendar calendar;
    std::optional<FlightRead> byDays = {}; // of the trap
    std::optional<FlightRead> byWarmth = {}; // where the station's course reaches over the flight

    // Errors  RecordMissing {"trap"}; those of store::siteCalendar
    static domain::Result<std::shared_ptr<const CalendarBook>> read(store::Reader& reader,
        const domain::Uuid& trap, const domain::Protocol& protocol, domain::LocalDay today);
};

// The flights of the district, all traps of the pest that are on this device together. Takes seconds where
// traps are many.
struct DistrictFlight {
    std::optional<FlightRead> byDays = {};
    std::optional<FlightRead> byWarmth = {}; // by the station of the field
};
domain::Result<std::shared_ptr<const DistrictFlight>> districtFlight(
    store::Reader& reader, const CalendarBook& book);

} // namespace duskrow::app
