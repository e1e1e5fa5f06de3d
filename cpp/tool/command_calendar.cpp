// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include <algorithm>
#include <array>

#include "domain/rules/pest_calendar.h"
#include "text/amounts.h"
#include "text/protocol_figures.h"
#include "tool/commands.h"
#include "tool/flight_found.h"
#include "tool/json_values.h"
#include "tool/output.h"
#include "tool/season_asked.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

struct CalendarLine {
    SeasonAsked asked;
    std::string site;
    std::string pest = "bertha-armyworm";
    std::string protocols;
    bool asJson = false;
};

constexpr std::array eventCodes{"traps_up", "first_moths", "peak", "hatch", "scouting", "damaging_larvae",
    "crop_stage", "cutting", "last_control"};
constexpr std::array reasonCodes{"noted", "first_catch", "counts", "flight_expected", "heat_sum",
    "protocol_days", "after_set_up", "after_peak", "after_seeding", "after_stage_seen", "before_cutting"};

// A site with what stands at it, all looked at together.
struct SiteSeen {
    SeasonSeen seen;
    SeasonRecords records;
    const Site* site = nullptr;
};

Result<const Site*> siteNamed(const SeasonRecords& records, const std::string& name)
{
    const QString wanted = QString::fromStdString(name).simplified();
    const Site* found = nullptr;
    for (const Site& site : records.sites) {
        if (QString::fromStdString(site.name).simplified().compare(wanted, Qt::CaseInsensitive) != 0
            && formatUuid(site.id) != name)
            continue;
        if (found) return Error{ErrorCode::NameAmbiguous, {"site", name}};
        found = &site;
    }
    if (!found) return Error{ErrorCode::NameMissing, {"site", name}};
    return found;
}

struct CalendarFound {
    std::string site;
    std::string station;
    std::optional<FlightPosterior> flight;
    std::optional<HeatCourse> heat;
    std::size_t pastYears = 0;
    std::vector<CalendarSpan> spans;
    std::shared_ptr<const Protocol> protocol;
};

// What the traps of the site tell: set-up, first moth, flight and the place.
Result<Done> takeTraps(store::Reader& reader, const SiteSeen& at, const CalendarLine& line,
    CalendarFacts& facts, CalendarFound& found)
{
    ProtocolShelf shelf(line.protocols);
    std::vector<TrapFlight> flights;
    std::optional<GeoPoint> place;
    std::string trapType;
    for (const Trap& trap : at.records.traps) {
        if (trap.site != at.site->id || trap.pest != line.pest) continue;
        const auto result = trapResult(at.records.facts(trap), at.records.season, facts.today, shelf);
        if (!result) return result.error();
        trapType = trap.trapType;
        if (trap.place()) place = trap.place();
        if (trap.setDay && (!facts.setDay || *trap.setDay < *facts.setDay)) facts.setDay = trap.setDay;
        for (const CatchStep& step : result->season.steps) {
            if (!step.caught || step.caught->value() < 1) continue;
            if (!facts.firstCatchTo || step.to < *facts.firstCatchTo) {
                facts.firstCatchTo = step.to;
                facts.firstCatchFrom = step.from;
            }
            break;
        }
        flights.push_back(flightOf(result->season));
    }
    if (trapType.empty()) trapType = facts.protocol.trapTypes.front().id;
    if (facts.protocol.flightModel) {
        const auto prior = priorFor(reader, facts.protocol, trapType, facts.year, facts.today);
        if (!prior) return prior.error();
        found.pastYears = prior->years;
        auto flight = flightPosterior(flights, lastLook(flights, dayNumber(facts.today)), prior->prior);
        if (!flight) return flight.error();
        found.flight = std::move(*flight);
        facts.flight = &*found.flight;
    }
    if (!place) return Done{};
    auto heat = heatAt(reader, facts.protocol, *place, facts.year);
    if (!heat) return heat.error();
    if (!*heat) return Done{};
    found.station = (*heat)->station;
    found.heat = std::move((*heat)->course);
    facts.heat = &*found.heat;
    return Done{};
}

// What walks and decisions tell of the crop.
Result<Done> takeWalks(store::Reader& reader, const SiteSeen& at, CalendarFacts& facts)
{
    const auto walks = store::walksOf(reader, at.records.season.id);
    if (!walks) return walks.error();
    const auto decisions = store::decisionsOfSeason(reader, at.records.season.id);
    if (!decisions) return decisions.error();
    for (const Walk& walk : *walks) {
        if (walk.site != at.site->id) continue;
        if (walk.day && walk.stageBbch && *walk.day <= facts.today)
            facts.stages.push_back({*walk.day, BbchStage{*walk.stageBbch}});
        for (const Decision& decision : *decisions) {
            if (decision.walk != walk.id) continue;
            if (decision.cuttingDay) facts.cuttingDay = decision.cuttingDay;
            if (decision.labelDays) facts.labelDays = decision.labelDays;
        }
    }
    return Done{};
}

Result<CalendarFound> calendarFor(const CalendarLine& line)
{
    auto seen = lookAt(line.asked);
    if (!seen) return seen.error();
    auto records = namedRecords(*seen->reader, seen->season, store::VisitsFor::Catch);
    if (!records) return records.error();
    SiteSeen at{std::move(*seen), std::move(*records), nullptr};
    const auto site = siteNamed(at.records, line.site);
    if (!site) return site.error();
    at.site = *site;
    auto protocol = protocolOf(line.pest, line.protocols);
    if (!protocol) return protocol.error();
    CalendarFound found;
    found.protocol = std::make_shared<const Protocol>(std::move(*protocol));
    found.site = at.site->name;
    CalendarFacts facts{.protocol = *found.protocol,
        .year = std::chrono::year{at.records.season.year.value_or(yearOf(at.seen.today))},
        .today = at.seen.today,
        .seededDay = at.site->seededDay};
    for (const ProtocolCrop& crop : found.protocol->crops)
        if (crop.id == at.site->crop) facts.crop = crop.id;
    if (const auto taken = takeTraps(*at.seen.reader, at, line, facts, found); !taken) return taken.error();
    if (const auto taken = takeWalks(*at.seen.reader, at, facts); !taken) return taken.error();
    found.spans = pestCalendar(facts);
    return found;
}

void printJson(const CalendarFound& found)
{
    Json entries = Json::array();
    for (const CalendarSpan& span : found.spans) {
        Json entry{{"what", eventCodes[static_cast<std::size_t>(span.what)]},
            {"earliest", formatDay(span.earliest)}, {"from", formatDay(span.from)},
            {"to", formatDay(span.to)}, {"latest", formatDay(span.latest)},
            {"certainty", span.isMeasured ? "measured" : "expected"},
            {"reason", reasonCodes[static_cast<std::size_t>(span.reason)]},
            {"source", span.source.empty() ? Json() : Json(span.source)}};
        if (!span.stage.empty()) entry["stage"] = span.stage;
        if (!span.numbers.empty()) entry["days"] = span.numbers;
        entries.push_back(std::move(entry));
    }
    Json warmth;
    if (found.heat) {
        const HeatPoint* const last = found.heat->points.empty() ? nullptr : &found.heat->points.back();
        warmth = {{"station", found.station}, {"measured_until", orNull(found.heat->measuredUntil)},
            {"total_measured",
                found.heat->measuredUntil ? Json(found.heat->totalBy(*found.heat->measuredUntil)) : Json()},
            {"past_years", found.heat->pastYears}, {"is_at_least", found.heat->isAtLeast},
            {"expected_by_the_end", last ? Json(last->total) : Json()}};
    }
    const Json json{{"site", found.site}, {"pest", found.protocol->id}, {"protocol", found.protocol->version},
        {"past_years_of_flights", found.pastYears}, {"warmth", warmth}, {"entries", entries}};
    print(QString::fromStdString(json.dump(2, ' ', false, Json::error_handler_t::replace)));
}

QString whatWords(const CalendarFound& found, const CalendarSpan& span)
{
    switch (span.what) {
    case CalendarWhat::TrapsUp:
        return said(QT_TRANSLATE_NOOP("Tool", "traps up"));
    case CalendarWhat::FirstMoths:
        return said(QT_TRANSLATE_NOOP("Tool", "first moths"));
    case CalendarWhat::Peak:
        return said(QT_TRANSLATE_NOOP("Tool", "peak of the flight"));
    case CalendarWhat::Hatch:
        return said(QT_TRANSLATE_NOOP("Tool", "eggs hatch"));
    case CalendarWhat::Scouting:
        return said(QT_TRANSLATE_NOOP("Tool", "scouting for larvae"));
    case CalendarWhat::DamagingLarvae:
        return said(QT_TRANSLATE_NOOP("Tool", "larvae of damaging size"));
    case CalendarWhat::Cutting:
        return said(QT_TRANSLATE_NOOP("Tool", "cutting"));
    case CalendarWhat::LastControl:
        return said(QT_TRANSLATE_NOOP("Tool", "last day for control by the label"));
    case CalendarWhat::CropStage:
        break;
    }
    for (const ProtocolCrop& crop : found.protocol->crops)
        for (const GrowthStage& stage : crop.growthStages)
            if (stage.id == span.stage) return inLanguage(stage.name);
    return QString::fromStdString(span.stage);
}

void printWords(const CalendarFound& found)
{
    print(QString::fromStdString(found.site));
    std::vector<QStringList> rows;
    const auto days = [](LocalDay from, LocalDay to) {
        return from == to ? text::shortDay(from)
                          : QStringLiteral("%1 – %2").arg(text::shortDay(from), text::shortDay(to));
    };
    for (const CalendarSpan& span : found.spans)
        rows.push_back({whatWords(found, span), days(span.from, span.to), days(span.earliest, span.latest),
            span.isMeasured ? said(QT_TRANSLATE_NOOP("Tool", "measured"))
                            : said(QT_TRANSLATE_NOOP("Tool", "expected")),
            span.source.empty() ? QString() : text::sourceWords(*found.protocol, span.source)});
    printTable({said(QT_TRANSLATE_NOOP("Tool", "what")), said(QT_TRANSLATE_NOOP("Tool", "likely")),
                   said(QT_TRANSLATE_NOOP("Tool", "at the widest")),
                   said(QT_TRANSLATE_NOOP("Tool", "how known")), said(QT_TRANSLATE_NOOP("Tool", "source"))},
        rows, {});
    for (const Statement& caution : found.protocol->cautionsAt(CautionPlace::Counting))
        print(inLanguage(caution.text));
}

Result<int> sayCalendar(const CalendarLine& line)
{
    const auto found = calendarFor(line);
    if (!found) return found.error();
    if (line.asJson)
        printJson(*found);
    else
        printWords(*found);
    return 0;
}

} // namespace

Work declareCalendar(CLI::App& line)
{
    const auto typed = std::make_shared<CalendarLine>();
    addSeason(line, typed->asked);
    line.add_option("--site", typed->site, "The site, by its name or id")->required()->type_name("NAME");
    line.add_option("--pest", typed->pest, "The pest (bertha-armyworm if left out)")->type_name("ID");
    line.add_flag("--json", typed->asJson, "For other programs: JSON");
    addProtocols(line, typed->protocols);
    return [typed] { return sayCalendar(*typed); };
}

} // namespace duskrow::tool
