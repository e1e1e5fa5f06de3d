// SPDX-License-Identifier: MIT
#include "tool/season_json.h"

#include <nlohmann/json.hpp>

#include "tool/json_values.h"
#include "tool/rules_json.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

const char* standingCode(SeasonStanding standing)
{
    switch (standing) {
    case SeasonStanding::SoFar:
        return "so_far";
    case SeasonStanding::Whole:
        return "whole";
    case SeasonStanding::PartOfFlight:
        return "part_of_flight";
    case SeasonStanding::NotKnown:
        return "not_known";
    }
    return "";
}

Json visitJson(const VisitCatch& visit)
{
    return {{"id", formatUuid(visit.visit)}, {"day", formatDay(visit.day)}, {"moths", orNull(visit.count)},
        {"nights", orNull(visit.nights)}, {"moths_per_night", orNull(visit.rate)},
        {"so_far", visit.soFar.value()}, {"at_least", visit.isAtLeast}};
}

Json bandJson(const TrapResult& result)
{
    if (!result.band) return {};
    return {{"id", result.band->id}, {"name", result.band->name.en}, {"level", result.band->level}};
}

Json trapJson(const SeasonRecords& records, const TrapResult& result)
{
    const Trap& trap = *result.trap;
    const Site* site = records.siteOf(trap);
    const bool isCounted = result.season.countedUntil.has_value();
    Json json{{"id", formatUuid(trap.id)}, {"tag", trap.tag}, {"site", site ? Json(site->name) : Json()},
        {"district", records.districtOf(trap).toStdString()}, {"pest", trap.pest},
        {"trap_type", trap.trapType}, {"set_up_by_protocol_version", trap.protocolVersion},
        {"shown_by_protocol_version", result.protocol->version}, {"set_day", orNull(trap.setDay)},
        {"end_day", orNull(trap.endDay)}, {"counted_until", orNull(result.season.countedUntil)},
        {"moths", isCounted ? Json(result.season.total.value()) : Json()},
        {"is_minimum", result.season.isMinimum()}, {"is_provisional", result.season.isProvisional},
        {"moths_waiting_for_a_name", result.season.waiting.value()},
        {"standing", standingCode(result.season.standing)}, {"band", bandJson(result)}};
    json["rules"] = rulesJson(result);
    Json visits = Json::array();
    for (const VisitCatch& visit : result.season.visits) visits.push_back(visitJson(visit));
    json["visits"] = std::move(visits);
    return json;
}

} // namespace

std::string seasonJson(const SeasonRecords& records, const std::vector<TrapResult>& results, LocalDay today)
{
    Json traps = Json::array();
    for (const TrapResult& result : results) traps.push_back(trapJson(records, result));
    const auto& year = records.season.year;
    const Json json{
        {"season", year ? Json(*year) : Json()}, {"day", formatDay(today)}, {"traps", std::move(traps)}};
    return json.dump(2, ' ', false, Json::error_handler_t::replace);
}

} // namespace duskrow::tool
