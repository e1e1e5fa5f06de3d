// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/bulletin/bulletin.h"

// Reports of invented traps, each of a farm of its own unless said otherwise.
namespace duskrow::domain {

inline Uuid numbered(int kind, int number)
{
    Uuid id;
    id.bytes[0] = static_cast<std::uint8_t>(kind);
    id.bytes[14] = static_cast<std::uint8_t>(number / 256);
    id.bytes[15] = static_cast<std::uint8_t>(number % 256);
    return id;
}

inline WeekReport reported(
    int number, std::optional<std::size_t> district, GridCell cell, double moths, std::int64_t soFar)
{
    WeekReport report;
    report.trap = numbered(1, number);
    report.reporter = {numbered(2, number), district, cell};
    report.fix = Metres{5};
    report.isExpected = true;
    report.isCounted = true;
    report.moths = moths;
    report.soFar = Moths{soFar};
    report.phase = FlightPhase::Rising;
    return report;
}

inline std::vector<Band> fourBands()
{
    std::vector<Band> bands(4);
    const std::array<std::int64_t, 4> from{0, 300, 900, 1200};
    for (std::size_t i = 0; i < bands.size(); ++i) {
        bands[i].level = static_cast<int>(i) + 1;
        bands[i].id = "band" + std::to_string(i + 1);
        bands[i].from = Moths{from.at(i)};
        if (i + 1 < bands.size()) bands[i].below = Moths{from.at(i + 1)};
    }
    return bands;
}

} // namespace duskrow::domain
