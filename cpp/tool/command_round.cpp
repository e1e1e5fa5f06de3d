// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QFile>
#include <QLocale>

#include <nlohmann/json.hpp>

#include "domain/rules/geodesy.h"
#include "domain/rules/visiting_order.h"
#include "formats/geo_uri.h"
#include "formats/gpx.h"
#include "text/amounts.h"
#include "text/way_text.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/output.h"
#include "tool/round_stops.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

struct RoundLine {
    std::string store;
    std::string table;
    std::string from;
    std::string metric = "straight";
    std::string infested = "last";
    std::string gpx;
    std::string on;
    std::string keys;
    std::string protocols;
    bool comesBack = false;
    bool asJson = false;
};

Result<RoundSettings> settingsOf(const RoundLine& line)
{
    RoundSettings settings;
    if (line.metric == "grid")
        settings.metric = RoundMetric::SurveyGrid;
    else if (line.metric != "straight")
        return Error{ErrorCode::UnknownCode, {"metric", line.metric, "straight, grid"}};
    if (line.infested != "last" && line.infested != "any")
        return Error{ErrorCode::UnknownCode, {"infested", line.infested, "last, any"}};
    settings.infestedLast = line.infested == "last";
    settings.end = line.comesBack ? PathEnd::AtStart : PathEnd::Anywhere;
    return settings;
}

// Divided rather than multiplied, so that 52.1 comes out as 52.1.
double degrees(std::int32_t e7)
{
    return e7 / 1e7;
}

Json placeJson(GeoPoint place)
{
    return {{"lat_deg", degrees(place.latE7)}, {"lon_deg", degrees(place.lonE7)}};
}

std::string roundJson(
    const NamedStops& named, const Round& round, GeoPoint from, const RoundSettings& settings)
{
    const bool isGrid = settings.metric == RoundMetric::SurveyGrid;
    Json json{{"kind", "order_suggestion"}, {"metric", isGrid ? "survey_grid" : "straight_line"},
        {"from", placeJson(from)}, {"comes_back", settings.end == PathEnd::AtStart},
        {"length_m", round.length.value()}, {"nearest_next_length_m", round.nearestLength.value()},
        {"is_shortest", round.isShortest}};
    Json stops = Json::array();
    for (const RoundLeg& leg : round.legs) {
        const NamedStop& stop = named.stops[leg.stop];
        stops.push_back({{"order", stops.size() + 1}, {"name", stop.name.toStdString()},
            {"lat_deg", degrees(stop.place.latE7)}, {"lon_deg", degrees(stop.place.lonE7)},
            {"geo_uri", formats::geoUri(stop.place)}, {"distance_m", leg.distance.value()},
            {"bearing_deg", leg.bearing ? Json(leg.bearing->value()) : Json()}, {"infested", stop.isInfested},
            {"due", stop.task.toStdString()}});
    }
    json["stops"] = std::move(stops);
    Json left = Json::array();
    for (const QString& name : named.withoutPlace) left.push_back(name.toStdString());
    json["without_place"] = std::move(left);
    return json.dump(2, ' ', false, Json::error_handler_t::replace);
}

void printRoundStops(const NamedStops& named, const Round& round)
{
    std::vector<QStringList> rows;
    Metres sum{0.0};
    bool isAnyInfested = false;
    for (const RoundLeg& leg : round.legs) {
        const NamedStop& stop = named.stops[leg.stop];
        sum += leg.distance;
        isAnyInfested = isAnyInfested || stop.isInfested;
        QStringList what{stop.task};
        if (stop.isInfested) what << said(QT_TRANSLATE_NOOP("Tool", "infested"));
        what.removeAll(QString());
        rows.push_back({QLocale().toString(static_cast<qulonglong>(rows.size() + 1)), stop.name,
            text::distance(leg.distance), leg.bearing ? text::name(compassPoint(*leg.bearing)) : QString(),
            text::distance(sum), what.join(QStringLiteral("; "))});
    }
    printTable(
        {QString(), said(QT_TRANSLATE_NOOP("Tool", "stop")), said(QT_TRANSLATE_NOOP("Tool", "from the last")),
            said(QT_TRANSLATE_NOOP("Tool", "towards")), said(QT_TRANSLATE_NOOP("Tool", "in all")),
            said(QT_TRANSLATE_NOOP("Tool", "what"))},
        rows, {0, 2, 4});
    if (isAnyInfested)
        print(said(QT_TRANSLATE_NOOP("Tool", "Clean boots and wheels after an infested field.")));
}

void printRound(const NamedStops& named, const Round& round, const RoundSettings& settings)
{
    const QString length = text::distance(round.length);
    if (named.stops.empty())
        print(said(QT_TRANSLATE_NOOP("Tool", "There is no stop to make.")));
    else if (settings.metric == RoundMetric::SurveyGrid)
        print(said(QT_TRANSLATE_NOOP("Tool", "A suggestion: %1 along a square grid. No road is known here."))
                  .arg(length));
    else
        print(said(QT_TRANSLATE_NOOP("Tool",
                       "A suggestion: %1 in straight lines. Roads are longer, and none is known here."))
                  .arg(length));
    if (!named.stops.empty()) printRoundStops(named, round);
    if (settings.end == PathEnd::AtStart && !named.stops.empty())
        print(said(QT_TRANSLATE_NOOP("Tool", "The way back to the start is part of the length.")));
    for (const QString& name : named.withoutPlace)
        print(said(QT_TRANSLATE_NOOP("Tool", "Due as well, but nobody has noted its place: %1.")).arg(name));
    for (const QString& caution : named.cautions) print(caution);
}

Result<Done> writeRound(const std::string& path, const NamedStops& named, const Round& round)
{
    formats::GpxRoute route;
    route.name = said(QT_TRANSLATE_NOOP("Tool", "Order of the stops: a suggestion")).toStdString();
    for (const RoundLeg& leg : round.legs) {
        const NamedStop& stop = named.stops[leg.stop];
        route.points.push_back({stop.place, stop.name.toStdString(), stop.task.toStdString()});
    }
    const auto bytes = formats::writeGpx({{}, {}, {}, route.points, {route}});
    if (!bytes) return bytes.error();
    QFile file(QString::fromStdString(path));
    if (file.exists()) return Error{ErrorCode::StoreExists, {path}};
    const auto size = static_cast<qint64>(bytes->size());
    if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly) || file.write(bytes->data(), size) != size
        || !file.flush())
        return Error{ErrorCode::FileUnwritable, {path}};
    return Done{};
}

Result<int> sayRound(const RoundLine& line)
{
    const auto today = dayOrToday(line.on);
    if (!today) return today.error();
    const auto from = placeFrom(line.from);
    if (!from) return from.error();
    const auto settings = settingsOf(line);
    if (!settings) return settings.error();
    const auto named = line.table.empty() ? stopsOfStore(line.store, line.keys, line.protocols, *today)
                                          : stopsOfTable(line.table);
    if (!named) return named.error();
    std::vector<RoundStop> stops;
    for (const NamedStop& stop : named->stops) stops.push_back({stop.place, stop.isInfested});
    const auto round = visitingOrder(*from, stops, *settings);
    if (!round) return round.error();
    if (!line.gpx.empty())
        if (const auto written = writeRound(line.gpx, *named, *round); !written) return written.error();
    if (line.asJson)
        print(QString::fromStdString(roundJson(*named, *round, *from, *settings)));
    else
        printRound(*named, *round, *settings);
    return 0;
}

} // namespace

Work declareRound(CLI::App& line)
{
    const auto typed = std::make_shared<RoundLine>();
    CLI::Option_group* stops = line.add_option_group("Stops", "Where they come from: one of the two");
    stops->add_option("STORE", typed->store, "The file of the store: the stops that are due");
    stops
        ->add_option(
            "--csv", typed->table, "A table of stops: name, lat, lon and, if known, infested (yes or no)")
        ->type_name("FILE");
    stops->require_option(1);
    line.add_option("--from", typed->from, "Where the round begins, such as 52.1579,-106.6702")
        ->required()
        ->type_name("LAT,LON");
    line.add_option("--metric", typed->metric,
            "straight lines, or along a survey grid: straight (if left out) or grid")
        ->type_name("WAY");
    line.add_option("--infested", typed->infested,
            "Infested fields come last (if left out) or in any place: last or any")
        ->type_name("WHEN");
    line.add_flag("--back", typed->comesBack, "End where the round began");
    line.add_option(
            "--gpx", typed->gpx, "Write the stops and their order for a receiver; no file is overwritten")
        ->type_name("OUT");
    line.add_option("--on", typed->on, "The day asked about, such as 2026-07-14 (today if left out)")
        ->type_name("DAY");
    line.add_flag("--json", typed->asJson, "For other programs: JSON");
    addKeys(line, typed->keys);
    addProtocols(line, typed->protocols);
    return [typed] { return sayRound(*typed); };
}

} // namespace duskrow::tool
