// SPDX-License-Identifier: MIT
#include "domain/bulletin/area_news.h"

#include <algorithm>

#include "domain/bulletin/phase_names.h"
#include "domain/log/bounded_json.h"

namespace duskrow::domain {

namespace {

using Json = nlohmann::json;

constexpr std::int64_t most = 1'000'000'000;
constexpr int mostLevels = 4;

Json newsJson(const AreaNews& area)
{
    Json json{{"name", area.name}};
    if (!area.district.isNil()) json["district"] = formatUuid(area.district);
    if (!area.figures) return json;
    const AreaFigures& figures = *area.figures;
    json["counted"] = figures.counted;
    json["expected"] = figures.expected;
    json["week_median"] = figures.weekMedian.value();
    json["season_median"] = figures.seasonMedian.value();
    json["caught_any"] = figures.caughtAny;
    json["phase"] = phaseNames.at(static_cast<std::size_t>(figures.phase));
    if (figures.typicalLevel) json["typical_level"] = *figures.typicalLevel;
    if (figures.highestLevel) json["highest_level"] = *figures.highestLevel;
    return json;
}

std::optional<std::int64_t> whole(const Json& json, const char* name, std::int64_t low, std::int64_t high)
{
    const auto found = json.find(name);
    if (found == json.end() || !found->is_number_integer()) return std::nullopt;
    const auto value = found->get<std::int64_t>();
    return value < low || value > high ? std::nullopt : std::optional(value);
}

std::string text(const Json& json, const char* name)
{
    const auto found = json.find(name);
    return found != json.end() && found->is_string() ? found->get<std::string>() : std::string();
}

std::optional<int> level(const Json& json, const char* name)
{
    const auto found = whole(json, name, 1, mostLevels);
    return found ? std::optional(static_cast<int>(*found)) : std::nullopt;
}

std::optional<AreaFigures> figuresIn(const Json& json)
{
    const auto counted = whole(json, "counted", 0, most);
    const auto expected = whole(json, "expected", 0, most);
    const auto week = whole(json, "week_median", 0, most);
    const auto season = whole(json, "season_median", 0, most);
    if (!counted || !expected || !week || !season) return std::nullopt;
    AreaFigures figures;
    figures.counted = static_cast<std::size_t>(*counted);
    figures.expected = static_cast<std::size_t>(*expected);
    figures.weekMedian = Moths{*week};
    figures.seasonMedian = Moths{*season};
    const auto any = json.find("caught_any");
    figures.caughtAny = any != json.end() && any->is_boolean() && any->get<bool>();
    const auto* const phase = std::find(phaseNames.begin(), phaseNames.end(), text(json, "phase"));
    if (phase != phaseNames.end()) figures.phase = static_cast<FlightPhase>(phase - phaseNames.begin());
    figures.typicalLevel = level(json, "typical_level");
    figures.highestLevel = level(json, "highest_level");
    return figures;
}

} // namespace

std::vector<AreaNews> areaNewsOf(const Bulletin& bulletin, std::span<const Uuid> districts)
{
    std::vector<AreaNews> areas{{{}, bulletin.region, bulletin.whole}};
    for (std::size_t i = 0; i < bulletin.districts.size(); ++i)
        areas.push_back({i < districts.size() ? districts[i] : Uuid{}, bulletin.districts[i].name,
            bulletin.districts[i].figures});
    return areas;
}

std::string areaNewsText(std::span<const AreaNews> areas, std::size_t most)
{
    std::string list = "[";
    for (const AreaNews& area : areas) {
        const std::string one = newsJson(area).dump(-1, ' ', false, Json::error_handler_t::replace);
        if (list.size() + one.size() + 2 > most) break;
        if (list.size() > 1) list += ',';
        list += one;
    }
    return list + "]";
}

std::vector<AreaNews> readAreaNews(std::string_view text)
{
    constexpr std::size_t depth = 3;
    const auto json = parseBounded(text, depth);
    std::vector<AreaNews> areas;
    if (!json || !json->is_array()) return areas;
    for (const Json& one : *json) {
        if (!one.is_object()) continue;
        AreaNews area{parseUuid(duskrow::domain::text(one, "district")).value_or(Uuid{}),
            duskrow::domain::text(one, "name"), figuresIn(one)};
        areas.push_back(std::move(area));
    }
    return areas;
}

} // namespace duskrow::domain
