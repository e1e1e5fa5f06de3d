// SPDX-License-Identifier: MIT
#include "formats/bulletin/area_features.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "formats/utf8.h"

namespace duskrow::formats {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

// Six decimals are a tenth of a metre; more would only look exact.
double sixDecimals(double degrees)
{
    return std::round(degrees * 1e6) / 1e6;
}

// Twice the signed area: positive for a ring that runs anticlockwise.
double turning(const Ring& ring)
{
    double sum = 0;
    for (std::size_t i = 0; i + 1 < ring.size(); ++i)
        sum += ring[i].longitude * ring[i + 1].latitude - ring[i + 1].longitude * ring[i].latitude;
    return sum;
}

class Features {
public:
    explicit Features(const BulletinDocument& document) : m_document(document) { }

    std::string written()
    {
        Json features = Json::array();
        for (const DistrictWeek& district : m_document.bulletin.districts)
            features.push_back(ofDistrict(district));
        for (const CellWeek& cell : m_document.bulletin.cells) features.push_back(ofCell(cell));
        Json collection{{"type", "FeatureCollection"}};
        if (m_west <= m_east) collection["bbox"] = {m_west, m_south, m_east, m_north};
        collection["features"] = std::move(features);
        return collection.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
    }

private:
    Json about(const char* kind, const Json& name) const
    {
        const Bulletin& bulletin = m_document.bulletin;
        return {{"kind", kind}, {"name", name}, {"week", weekText(bulletin.iso)},
            {"first_day", formatDay(bulletin.week.first)}, {"last_day", formatDay(bulletin.week.last)},
            {"issue", bulletin.issue}, {"pest", bulletin.pest}};
    }

    static Json orNull(std::string text) { return text.empty() ? Json() : Json(std::move(text)); }

    void addFigures(Json& properties, const AreaFigures& figures) const
    {
        properties["week_median_moths"] = figures.weekMedian.value();
        properties["season_median_moths"] = figures.seasonMedian.value();
        properties["median_band_so_far"] = orNull(bandId(m_document.bulletin, figures.typicalLevel));
        properties["highest_band_so_far"] = orNull(bandId(m_document.bulletin, figures.highestLevel));
        properties["flight"] = orNull(phaseCode(figures.phase));
    }

    Json ofDistrict(const DistrictWeek& district)
    {
        Json properties = about("district", validUtf8(district.name));
        properties["is_published"] = district.figures.has_value();
        if (district.figures) {
            properties["traps_counted"] = district.figures->counted;
            properties["traps_expected"] = district.figures->expected;
            addFigures(properties, *district.figures);
        }
        const OverlayArea* area =
            m_document.overlay ? areaNamed(*m_document.overlay, district.name) : nullptr;
        return feature(
            area && !area->polygons.empty() ? geometry(area->polygons) : Json(), std::move(properties));
    }

    Json ofCell(const CellWeek& cell)
    {
        Json properties = about("cell", Json());
        properties["is_published"] = true;
        addFigures(properties, cell.figures);
        properties["coordinateUncertaintyInMeters"] = std::llround(cell.uncertainty.value());
        properties["dataGeneralizations"] = m_document.words.generalization;
        const GeoPoint low = southWestOf(cell.cell);
        const GeoPoint high = northEastOf(cell.cell);
        const LonLat southWest{low.longitude(), low.latitude()};
        const LonLat northEast{high.longitude(), high.latitude()};
        return feature(geometry({{{southWest, {northEast.longitude, southWest.latitude}, northEast,
                           {southWest.longitude, northEast.latitude}, southWest}}}),
            std::move(properties));
    }

    static Json feature(Json geometry, Json properties)
    {
        return {
            {"type", "Feature"}, {"geometry", std::move(geometry)}, {"properties", std::move(properties)}};
    }

    Json geometry(const std::vector<Polygon>& polygons)
    {
        Json written = Json::array();
        for (const Polygon& polygon : polygons) {
            Json rings = Json::array();
            for (std::size_t i = 0; i < polygon.size(); ++i) rings.push_back(ring(polygon[i], i == 0));
            written.push_back(std::move(rings));
        }
        if (written.size() == 1) return {{"type", "Polygon"}, {"coordinates", std::move(written[0])}};
        return {{"type", "MultiPolygon"}, {"coordinates", std::move(written)}};
    }

    Json ring(Ring places, bool isOuter)
    {
        if ((turning(places) > 0) != isOuter) std::reverse(places.begin(), places.end());
        Json written = Json::array();
        for (const LonLat place : places) {
            const double longitude = sixDecimals(place.longitude);
            const double latitude = sixDecimals(place.latitude);
            written.push_back({longitude, latitude});
            m_west = std::min(m_west, longitude);
            m_east = std::max(m_east, longitude);
            m_south = std::min(m_south, latitude);
            m_north = std::max(m_north, latitude);
        }
        return written;
    }

    const BulletinDocument& m_document;
    double m_west = 180;
    double m_east = -180;
    double m_south = 90;
    double m_north = -90;
};

} // namespace

std::string areaFeatures(const BulletinDocument& document)
{
    return Features(document).written();
}

} // namespace duskrow::formats
