// SPDX-License-Identifier: MIT
#include "domain/records/weather.h"

#include "domain/records/field_table.h"

namespace duskrow::domain {

using enum MergeClass;

namespace {
// Colder and warmer than any place on earth was ever measured (-89.2 and 56.7 degrees; from memory).
constexpr std::int64_t coldest = -95'000;
constexpr std::int64_t hottest = 65'000;
constexpr const char* milli = "0.001 degree Celsius";
} // namespace

template <>
const RecordKind& kindOf<Station>()
{
    static const RecordKind kind{"station",
        {
            table::withdrawn(),
            table::required(table::text("name", &Station::name, Label)),
            table::integer("lat_e7", &Station::latE7, "1e-7 degree", -900'000'000, 900'000'000),
            table::integer("lon_e7", &Station::lonE7, "1e-7 degree", -1'800'000'000, 1'800'000'000),
            table::integer("day_ends_minute", &Station::dayEndsMinute, "min", 0, 1439, Label),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Temperature>()
{
    static const RecordKind kind{"temperature",
        {
            table::withdrawn(),
            table::id("station", &Temperature::station),
            table::day("day", &Temperature::day, Label),
            table::integer("minimum_mc", &Temperature::minimum, milli, coldest, hottest),
            table::integer("maximum_mc", &Temperature::maximum, milli, coldest, hottest),
        }};
    return kind;
}

Uuid stationId(const Uuid& programme, const std::string& name)
{
    const std::array parts{formatUuid(programme), std::string("station"), name};
    return uuidFromName(parts);
}

Uuid temperatureId(const Uuid& programme, const Uuid& station, LocalDay day)
{
    const std::array parts{
        formatUuid(programme), std::string("temperature"), formatUuid(station), formatDay(day)};
    return uuidFromName(parts);
}

} // namespace duskrow::domain
