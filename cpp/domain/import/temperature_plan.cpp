// SPDX-License-Identifier: MIT
#include "domain/import/temperature_plan.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "domain/base/plain_word.h"
#include "domain/rules/geodesy.h"

namespace duskrow::domain {

namespace {

MilliCelsius milliOf(double degrees, HeatUnit unit)
{
    const double celsius = unit == HeatUnit::Celsius ? degrees : toCelsius(degrees);
    return MilliCelsius{std::llround(celsius * 1000.0)};
}

std::string degreesOf(const std::optional<MilliCelsius>& milli)
{
    if (!milli) return "?";
    const long long tenths = std::llround(static_cast<double>(milli->value()) / 100.0);
    const std::string sign = tenths < 0 ? "-" : "";
    return sign + std::to_string(std::abs(tenths) / 10) + '.' + std::to_string(std::abs(tenths) % 10);
}

bool wasUndone(const Record& record)
{
    return record.withdrawn.starts_with(undoneReason);
}

// The station as it is told; what is there already is kept where nothing is told.
void planStation(ImportPlan& plan, const Uuid& id, const StationTold& told, std::span<const Station> stations)
{
    const auto there =
        std::find_if(stations.begin(), stations.end(), [&](const Station& s) { return s.id == id; });
    Station station = there == stations.end() ? Station{} : *there;
    station.id = id;
    station.withdrawn.clear();
    if (station.name.empty()) station.name = std::string(withoutBlanks(told.name));
    if (told.place) {
        station.latE7 = told.place->latE7;
        station.lonE7 = told.place->lonE7;
    }
    if (told.dayEndsMinute) station.dayEndsMinute = told.dayEndsMinute;
    Edit edit = there == stations.end() ? creation(station, {}) : correction(*there, station, {});
    if (edit.fields.empty()) return;
    plan.places.push_back(std::move(edit));
    ++plan.made["station"];
}

} // namespace

Uuid stationNamed(std::span<const Station> stations, const Uuid& programme, const std::string& name)
{
    const std::string plain = plainWord(name);
    for (const Station& station : stations)
        if (station.withdrawn.empty() && plainWord(station.name) == plain) return station.id;
    return stationId(programme, plain);
}

ImportPlan planTemperatures(std::span<const TemperatureRow> rows, HeatUnit unit, RowWords refused,
    const StationTold& told, std::span<const Station> stations, std::span<const Temperature> known,
    const Uuid& programme)
{
    ImportPlan plan;
    plan.refused = std::move(refused);
    const Uuid station = stationNamed(stations, programme, told.name);
    planStation(plan, station, told, stations);
    std::map<LocalDay, const Temperature*> byDay;
    for (const Temperature& one : known)
        if (one.station == station && one.day) byDay.emplace(*one.day, &one);
    for (const TemperatureRow& row : rows) {
        Temperature made;
        made.id = temperatureId(programme, station, row.day);
        made.station = station;
        made.day = row.day;
        made.minimum = milliOf(row.minimum, unit);
        made.maximum = milliOf(row.maximum, unit);
        const auto found = byDay.find(row.day);
        if (found == byDay.end()) {
            plan.places.push_back(creation(made, {}));
            ++plan.made["temperature"];
            continue;
        }
        const Temperature& there = *found->second;
        if (wasUndone(there)) {
            made.id = there.id;
            plan.places.push_back(correction(there, made, {}));
            ++plan.made["temperature"];
        } else if (!there.withdrawn.empty()) {
            plan.refused.add({row.line, {}, {ErrorCode::RecordWithdrawn, {"temperature", there.withdrawn}}});
        } else if (there.minimum == made.minimum && there.maximum == made.maximum) {
            ++plan.alreadyThere;
        } else {
            plan.refused.add({row.line, {},
                {ErrorCode::TemperatureDiffers, {degreesOf(there.minimum), degreesOf(there.maximum)}}});
        }
    }
    return plan;
}

const Station* nearestStation(std::span<const Station> stations, const GeoPoint& place)
{
    const Station* nearest = nullptr;
    double least = 0.0;
    for (const Station& station : stations) {
        const auto at = station.place();
        if (!at || !station.withdrawn.empty()) continue;
        const double distance = courseBetween(place, *at).distance.value();
        if (nearest && distance >= least) continue;
        nearest = &station;
        least = distance;
    }
    return nearest;
}

std::vector<DayTemperature> toDays(std::span<const Temperature> records, HeatUnit unit)
{
    const auto degrees = [&](MilliCelsius milli) {
        const double celsius = static_cast<double>(milli.value()) / 1000.0;
        return unit == HeatUnit::Celsius ? celsius : toFahrenheit(celsius);
    };
    std::map<LocalDay, DayTemperature> byDay;
    for (const Temperature& one : records)
        if (one.withdrawn.empty() && one.day && one.minimum && one.maximum && *one.minimum <= *one.maximum)
            byDay.emplace(*one.day, DayTemperature{*one.day, degrees(*one.minimum), degrees(*one.maximum)});
    std::vector<DayTemperature> days;
    for (const auto& [day, temperature] : byDay) days.push_back(temperature);
    return days;
}

} // namespace duskrow::domain
