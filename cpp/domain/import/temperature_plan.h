// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/heat_method.h"
#include "domain/import/import_plan.h"
#include "domain/import/temperature_table.h"
#include "domain/records/weather.h"
#include "domain/rules/degree_days.h"

namespace duskrow::domain {

// The station a table of temperatures is of.
struct StationTold {
    std::string name;
    std::optional<GeoPoint> place;
    std::optional<int> dayEndsMinute;
};

// Works out what a table of temperatures makes: the station, met by its name, and a record a day under an id
// of station and day, so that the same table twice makes nothing. What differs from what is there, or was
// taken back by hand, is refused with its line and left as it is.
//
// rows   by day; of `unit`, kept in thousandths of a degree Celsius
// known  stations and temperatures of the station, withdrawn ones among them
ImportPlan planTemperatures(std::span<const TemperatureRow> rows, HeatUnit unit, RowWords refused,
    const StationTold& told, std::span<const Station> stations, std::span<const Temperature> known,
    const Uuid& programme);

// The station that a name means.
Uuid stationNamed(std::span<const Station> stations, const Uuid& programme, const std::string& name);

// The nearest to a place of those that have one and stand; null without any.
const Station* nearestStation(std::span<const Station> stations, const GeoPoint& place);

// Temperatures as the rules take them, in degrees Celsius or Fahrenheit, by day.
std::vector<DayTemperature> toDays(std::span<const Temperature> records, HeatUnit unit);

} // namespace duskrow::domain
