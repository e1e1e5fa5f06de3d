// SPDX-License-Identifier: MIT
#include "tool/region_json.h"

#include <cmath>

#include "tool/json_values.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

const char* standingCode(SurfaceStanding standing)
{
    switch (standing) {
    case SurfaceStanding::TooFewTraps:
        return "too_few_traps";
    case SurfaceStanding::AllEqual:
        return "all_equal";
    case SurfaceStanding::NoPattern:
        return "no_pattern";
    case SurfaceStanding::Drawn:
        return "drawn";
    }
    return "";
}

const char* coverCode(CellCover cover)
{
    switch (cover) {
    case CellCover::Shown:
        return "shown";
    case CellCover::Hatched:
        return "little_known";
    case CellCover::Masked:
        return "unknown";
    }
    return "";
}

Json spreadJson(const CatchSpread& spread)
{
    if (spread.traps == 0) return {{"traps", 0}};
    return {{"traps", spread.traps}, {"mean", spread.mean}, {"lower_quartile", spread.lowerQuartile},
        {"median", spread.median}, {"upper_quartile", spread.upperQuartile}, {"highest", spread.highest},
        {"with_moths", spread.withMoths}};
}

Json districtJson(const SeasonRecords& records, const DistrictSeason& district, std::span<const Band> bands)
{
    const auto name = records.names.find(district.district);
    Json json{{"district", name == records.names.end() ? Json() : Json(name->second.toStdString())},
        {"moths", spreadJson(district.season.catches)}, {"minimum", district.season.minimum},
        {"uncounted", district.season.uncounted},
        {"highest_trap", district.highest ? Json(records.title(*district.highest).toStdString()) : Json()}};
    json["bands"] = Json::object();
    for (std::size_t i = 0; i < bands.size(); ++i) json["bands"][bands[i].id] = district.season.inBand[i];
    json["weeks"] = Json::array();
    for (const RegionWeek& week : district.season.weeks)
        json["weeks"].push_back({{"first_day", formatDay(week.week.first)},
            {"last_day", formatDay(week.week.last)}, {"moths", spreadJson(week.catches)},
            {"minimum", week.atLeast}, {"uncounted", week.uncounted}});
    return json;
}

// Four digits: more would say more than is known.
double rounded(double value)
{
    return std::round(value * 1e4) / 1e4;
}

Json cellsJson(const SurfaceOfRegion& of)
{
    Json cells = Json::array();
    for (const SurfaceCell& cell : of.surface.cells) {
        if (cell.cover == CellCover::Masked) {
            cells.push_back({{"cover", coverCode(cell.cover)}});
            continue;
        }
        Json chances = Json::array();
        for (const double chance : cell.chances) chances.push_back(rounded(chance));
        cells.push_back({{"cover", coverCode(cell.cover)}, {"median", rounded(cell.medianTotal)},
            {"chances", std::move(chances)}});
    }
    return cells;
}

Json surfaceJson(const SurfaceOfRegion& of)
{
    const RegionalSurface& surface = of.surface;
    Json json{{"standing", standingCode(surface.standing)}, {"traps", surface.traps},
        {"seasons", of.isSoFar ? "so_far" : "whole"}};
    if (!surface.covariance) return json;
    json["error_by_neighbours"] = surface.errorByNeighbours;
    json["error_by_mean"] = surface.errorByMean;
    json["sill"] = surface.covariance->sill;
    json["range_m"] = surface.covariance->range.value();
    json["nugget"] = surface.covariance->nugget;
    if (surface.standing != SurfaceStanding::Drawn) return json;
    const SurfaceGrid& grid = of.where->grid;
    const auto corner = of.where->plane.placeAt(grid.southWest);
    json["edges"] = Json::array();
    for (const Moths edge : of.edges) json["edges"].push_back(edge.value());
    json["south_west"] = {{"latitude", corner.latitude()}, {"longitude", corner.longitude()}};
    json["cell_m"] = grid.cell.value();
    json["columns"] = grid.columns;
    json["rows"] = grid.rows;
    json["cells"] = cellsJson(of);
    return json;
}

Json groupJson(const GroupOfYear& group)
{
    return {{"moths", spreadJson(group.catches)}, {"minimum", group.minimum}, {"uncounted", group.uncounted}};
}

// Every year up to the same day. Keepers are not named: a table of them is for the screen.
Json yearsJson(
    const SeasonRecords& records, const std::vector<RegionYear>& years, std::span<const Band> bands)
{
    Json json = Json::array();
    for (const RegionYear& year : years) {
        Json one{{"year", year.year}, {"up_to", formatDay(year.on)}, {"whole", groupJson(year.all)},
            {"bands_of", year.isSoFar ? "so_far" : "whole_seasons"}};
        one["bands"] = Json::object();
        for (std::size_t i = 0; i < bands.size(); ++i) one["bands"][bands[i].id] = year.inBand[i];
        one["districts"] = Json::array();
        for (const GroupOfYear& group : year.districts) {
            const auto name = records.names.find(group.group);
            Json district = groupJson(group);
            district["district"] = name == records.names.end() ? Json() : Json(name->second.toStdString());
            one["districts"].push_back(std::move(district));
        }
        json.push_back(std::move(one));
    }
    return json;
}

} // namespace

std::string regionJson(const SeasonRecords& records, const std::vector<RegionOfKind>& regions,
    const std::vector<std::vector<RegionYear>>& years, LocalDay today)
{
    Json json{{"year", records.season.year.value_or(yearOf(today))}, {"on", formatDay(today)}};
    json["regions"] = Json::array();
    for (std::size_t i = 0; i < regions.size(); ++i) {
        const RegionOfKind& region = regions[i];
        Json one{{"pest", region.pest}, {"trap_type", region.trapType},
            {"protocol_version", region.protocol->version},
            {"whole", districtJson(records, region.result.whole, region.bands)}};
        one["districts"] = Json::array();
        for (const DistrictSeason& district : region.result.districts)
            one["districts"].push_back(districtJson(records, district, region.bands));
        one["surface"] = surfaceJson(region.surface);
        one["years"] = yearsJson(records, years[i], region.bands);
        json["regions"].push_back(std::move(one));
    }
    return json.dump();
}

} // namespace duskrow::tool
