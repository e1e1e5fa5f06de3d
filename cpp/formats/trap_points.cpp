// SPDX-License-Identifier: MIT
#include "formats/trap_points.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "formats/gpx.h"
#include "formats/utf8.h"

namespace duskrow::formats {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

Json orNull(const std::string& text)
{
    return text.empty() ? Json() : Json(validUtf8(text));
}

Json featureOf(const ExportedTrap& trap)
{
    Json properties{{"season", trap.season}, {"district", orNull(trap.district)}, {"site", orNull(trap.site)},
        {"tag", orNull(trap.tag)}, {"pest", trap.pest}, {"trap_type", trap.trapType},
        {"moths", trap.total ? Json(trap.total->value()) : Json()}, {"is_at_least", trap.isAtLeast},
        {"band", orNull(trap.band)}};
    if (trap.accuracy) properties["accuracy_m"] = std::round(trap.accuracy->value() * 10) / 10;
    Json geometry;
    if (trap.place) // seven decimals are what the records hold
        geometry = {{"type", "Point"}, {"coordinates", {trap.place->lonE7 / 1e7, trap.place->latE7 / 1e7}}};
    return {{"type", "Feature"}, {"id", formatUuid(trap.id)}, {"geometry", std::move(geometry)},
        {"properties", std::move(properties)}};
}

std::string nameOf(const ExportedTrap& trap)
{
    return trap.tag.empty() ? trap.site : trap.site + ", " + trap.tag;
}

} // namespace

Result<std::vector<ExportedFile>> exportGeoJson(const ExportInput& input)
{
    Json features = Json::array();
    for (const ExportedTrap& trap : input.traps) features.push_back(featureOf(trap));
    const Json collection{{"type", "FeatureCollection"}, {"features", std::move(features)}};
    return std::vector<ExportedFile>{
        {"traps.geojson", collection.dump(1, ' ', false, Json::error_handler_t::replace) + "\n"}};
}

Result<std::vector<ExportedFile>> exportGpx(const ExportInput& input)
{
    Gpx gpx;
    gpx.name = input.programme;
    gpx.made = input.made;
    for (const ExportedTrap& trap : input.traps)
        if (trap.place)
            gpx.waypoints.push_back({*trap.place, nameOf(trap),
                std::to_string(trap.season) + ", " + trap.pest
                    + (trap.total ? ": " + std::to_string(trap.total->value()) : "")});
    auto bytes = writeGpx(gpx);
    if (!bytes) return bytes.error();
    return std::vector<ExportedFile>{{"traps.gpx", std::move(*bytes)}};
}

} // namespace duskrow::formats
