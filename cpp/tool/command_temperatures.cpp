// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QFileInfo>

#include <algorithm>

#include "domain/import/temperature_plan.h"
#include "domain/rules/heat_course.h"
#include "domain/rules/typed_place.h"
#include "domain/rules/typed_time.h"
#include "store/import_ledger.h"
#include "store/queries.h"
#include "sync/exchange/import_run.h"
#include "text/amounts.h"
#include "text/error_text.h"
#include "tool/commands.h"
#include "tool/heat_arguments.h"
#include "tool/holding.h"
#include "tool/import_undoing.h"
#include "tool/json_values.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

constexpr int daysRefused = 1;
constexpr qsizetype longestFileName =
    40; // characters of the file's name, which goes into the reason of an undoing

struct TemperaturesLine {
    std::string store;
    TemperatureFileLine file;
    std::string station;
    std::string position;
    std::string dayEnds;
    std::string keys;
    bool dryRun = false;
    bool asJson = false;
};

struct TemperaturesPreview {
    formats::TemperatureReading reading;
    ImportPlan plan;
    std::optional<int> dayEndsMinute; // of the station's own day; nothing where nobody told it
    bool isStationChanged = false; // one that is there already
};

std::size_t madeOf(const ImportPlan& plan, const char* kind)
{
    const auto found = plan.made.find(kind);
    return found == plan.made.end() ? 0 : found->second;
}

Result<TemperaturesPreview> previewOf(Holding& holding, const TemperaturesLine& line)
{
    auto reading = readTemperatureFile(line.file);
    if (!reading) return reading.error();
    if (!reading->scale.unit) return Error{ErrorCode::ScaleUnsaid, {}};
    StationTold told{line.station, {}, {}};
    if (!line.position.empty()) {
        const std::size_t comma = line.position.find(',');
        if (comma == std::string::npos) return Error{ErrorCode::NotAPlace, {line.position}};
        const auto place = parsePlace(line.position.substr(0, comma), line.position.substr(comma + 1));
        if (!place) return place.error();
        told.place = *place;
    }
    if (!line.dayEnds.empty()) {
        const auto time = parseTimeOfDay(line.dayEnds);
        if (!time) return time.error();
        told.dayEndsMinute = static_cast<int>(time->count());
    }
    const auto stations = store::stations(*holding.reader, true);
    if (!stations) return stations.error();
    const Uuid station = stationNamed(*stations, holding.store->programme(), line.station);
    const auto known = store::temperaturesOf(*holding.reader, station, true);
    if (!known) return known.error();
    auto plan = planTemperatures(reading->rows, *reading->scale.unit, std::move(reading->refused), told,
        *stations, *known, holding.store->programme());
    plan.repeated = reading->repeated;
    const auto there = std::ranges::find(*stations, station, &Station::id);
    if (!told.dayEndsMinute && there != stations->end()) told.dayEndsMinute = there->dayEndsMinute;
    const bool isChanged = there != stations->end() && madeOf(plan, "station") > 0;
    return TemperaturesPreview{std::move(*reading), std::move(plan), told.dayEndsMinute, isChanged};
}

Json previewJson(const TemperaturesPreview& preview)
{
    const auto& reading = preview.reading;
    std::vector<DayTemperature> days;
    for (const TemperatureRow& row : reading.rows) days.push_back({row.day, row.minimum, row.maximum});
    const BridgedDays series = bridged(days);
    Json gaps = Json::array();
    for (const DayGap& gap : series.gaps)
        gaps.push_back({{"from", formatDay(gap.first)}, {"to", formatDay(gap.last)}, {"days", gap.length()}});
    Json refused = Json::array();
    for (const RowWord& word : preview.plan.refused.words)
        refused.push_back({{"line", word.line}, {"why", text::sentence(word.error).toStdString()}});
    return {{"delimiter", std::string(formats::delimiterCode(reading.delimiter.delimiter))},
        {"unit", codeOf(*reading.scale.unit)}, {"unit_found_by", codeOf(reading.scale.reason)},
        {"columns",
            {{"date", reading.header[reading.columns.day]},
                {"minimum", reading.header[reading.columns.minimum]},
                {"maximum", reading.header[reading.columns.maximum]}}},
        {"day_ends_minute", preview.dayEndsMinute ? Json(*preview.dayEndsMinute) : Json()},
        {"days", reading.rows.size()}, {"first", days.empty() ? Json() : Json(formatDay(days.front().day))},
        {"last", days.empty() ? Json() : Json(formatDay(days.back().day))}, {"gaps", gaps},
        {"stations_made", madeOf(preview.plan, "station")},
        {"temperatures_made", madeOf(preview.plan, "temperature")},
        {"already_there", preview.plan.alreadyThere}, {"repeated", preview.plan.repeated},
        {"refused", refused}};
}

void printPreview(const TemperaturesPreview& preview)
{
    const auto& reading = preview.reading;
    const auto heading = [&](std::size_t column) { return QString::fromStdString(reading.header[column]); };
    print(said(QT_TRANSLATE_NOOP("Tool", "Day: “%1”. Lowest: “%2”. Highest: “%3”. Degrees: %4."))
              .arg(heading(reading.columns.day), heading(reading.columns.minimum),
                  heading(reading.columns.maximum), QString::fromLatin1(codeOf(*reading.scale.unit))));
    if (preview.isStationChanged)
        print(said(QT_TRANSLATE_NOOP("Tool",
            "The station is here already: its place or the end of its day is changed to what was given.")));
    if (preview.dayEndsMinute)
        print(said(QT_TRANSLATE_NOOP("Tool", "A day of the station ends at %1."))
                  .arg(text::timeOfDay(*preview.dayEndsMinute)));
    print(said(QT_TRANSLATE_NOOP("Tool", "Days: %1 new, %2 there already, %3 refused."))
              .arg(madeOf(preview.plan, "temperature"))
              .arg(preview.plan.alreadyThere)
              .arg(preview.plan.refused.rows));
    for (const RowWord& word : preview.plan.refused.words)
        printError(
            said(QT_TRANSLATE_NOOP("Tool", "Line %1: %2")).arg(word.line).arg(text::sentence(word.error)));
}

Result<int> takeTemperatures(const TemperaturesLine& line)
{
    auto holding = openToWrite(line.store, line.keys);
    if (!holding) return holding.error();
    if (holding->me.isNil()) return Error{ErrorCode::MemberUnsaid, {holding->store->path()}};
    if (!holding->roster.isAlone())
        if (const auto allowed = asCoordinator(*holding); !allowed) return allowed.error();
    const auto preview = previewOf(*holding, line);
    if (!preview) return preview.error();
    const DayOrderFinding& order = preview->reading.dayOrder;
    const bool isOpen = order.reason == DayOrderReason::Ambiguous || order.reason == DayOrderReason::Both;
    store::ImportRun run;
    if (!line.dryRun && !isOpen) {
        store::ImportNoted noted;
        noted.id = formatUuid(store::importId(holding->store->programme(), preview->reading.hash));
        noted.file =
            QFileInfo(QString::fromStdString(line.file.file)).fileName().left(longestFileName).toStdString();
        const auto done =
            sync::runImport(*holding->store, preview->plan, noted, importBy(*holding), progressShown());
        if (!done) return done.error();
        run = *done;
    }
    if (line.asJson) {
        Json json = previewJson(*preview);
        json["dry_run"] = line.dryRun || isOpen;
        json["kept"] = run.kept;
        print(QString::fromStdString(json.dump(2, ' ', false, Json::error_handler_t::replace)));
    } else {
        printPreview(*preview);
        print(said(QT_TRANSLATE_NOOP("Tool", "Kept: %1 records.")).arg(run.kept));
    }
    if (isOpen) return Error{ErrorCode::DayOrderUnsaid, {order.example}};
    return preview->plan.refused.rows > 0 ? daysRefused : 0;
}

} // namespace

Work declareTemperatures(CLI::App& line)
{
    const auto typed = std::make_shared<TemperaturesLine>();
    addStore(line, typed->store);
    addTemperatureFile(line, typed->file);
    line.add_option("--station", typed->station, "The weather station they are of")
        ->required()
        ->type_name("NAME");
    line.add_option("--position", typed->position, "Where it stands; sites take the nearest station")
        ->type_name("LAT,LON");
    line.add_option("--day-ends", typed->dayEnds,
            "When the day of the station ends by the clock there: 00:00, or 09:00 where it is read at nine "
            "(kept "
            "with the station and said beside every sum)")
        ->type_name("TIME");
    line.add_flag("--dry-run", typed->dryRun, "Show what would be made, and keep nothing");
    line.add_flag("--json", typed->asJson, "The preview and what was kept, for other programs");
    addKeys(line, typed->keys);
    return [typed] { return takeTemperatures(*typed); };
}

} // namespace duskrow::tool
