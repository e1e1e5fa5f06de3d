// SPDX-License-Identifier: MIT
#pragma once

#include "domain/records/field.h"

namespace duskrow::domain {

using MilliCelsius = Quantity<struct MilliCelsiusTag, std::int64_t>;

// Where temperatures are measured; known by its name.
struct Station : Record {
    std::string name;
    std::optional<std::int64_t> latE7;
    std::optional<std::int64_t> lonE7;
    std::optional<int> dayEndsMinute; // of the local day: 0 at midnight, 540 where it is read at nine

    [[nodiscard]] std::optional<GeoPoint> place() const
    {
        if (!latE7 || !lonE7) return std::nullopt;
        return GeoPoint{static_cast<std::int32_t>(*latE7), static_cast<std::int32_t>(*lonE7)};
    }
};

// The lowest and highest temperature of one day at a station.
struct Temperature : Record {
    Uuid station;
    std::optional<LocalDay> day;
    std::optional<MilliCelsius> minimum;
    std::optional<MilliCelsius> maximum;
};

template <>
const RecordKind& kindOf<Station>();
template <>
const RecordKind& kindOf<Temperature>();

// Ids made of names, so that the same file taken in by two people meets in the same records; `name` as
// plainWord gives it.
Uuid stationId(const Uuid& programme, const std::string& name);
Uuid temperatureId(const Uuid& programme, const Uuid& station, LocalDay day);

} // namespace duskrow::domain
