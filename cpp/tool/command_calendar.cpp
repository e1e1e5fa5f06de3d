// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>

#include "store/site_calendar.h"
#include "text/calendar_text.h"
#include "text/protocol_figures.h"
#include "tool/commands.h"
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
constexpr std::array gapCodes{"no_heat_terms", "no_place", "no_station", "no_temperatures", "none_this_year",
    "days_missing", "no_past_years", "no_sums", "no_flight_model", "no_larvae_days", "no_crop_days",
    "no_seeding", "no_cutting", "no_label_days"};

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
    store::SiteCalendar calendar;
    Protocol protocol;
};

Result<CalendarFound> calendarFor(const CalendarLine& line)
{
    const auto seen = lookAt(line.asked);
    if (!seen) return seen.error();
    const auto records = namedRecords(*seen->reader, seen->season, store::VisitsFor::Nothing);
    if (!records) return records.error();
    const auto site = siteNamed(*records, line.site);
    if (!site) return site.error();
    auto protocol = protocolOf(line.pest, line.protocols);
    if (!protocol) return protocol.error();
    auto calendar = store::siteCalendar(*seen->reader, seen->season, **site, *protocol, seen->today);
    if (!calendar) return calendar.error();
    return CalendarFound{(*site)->name, std::move(*calendar), std::move(*protocol)};
}

void printJson(const CalendarFound& found)
{
    Json entries = Json::array();
    for (const CalendarSpan& span : found.calendar.spans) {
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
    if (const HeatCourse* const heat = found.calendar.heat.get()) {
        const HeatPoint* const last = heat->points.empty() ? nullptr : &heat->points.back();
        const auto& endsAt = found.calendar.heat.dayEndsMinute;
        warmth = {{"station", found.calendar.heat.station},
            {"day_ends_minute", endsAt ? Json(*endsAt) : Json()},
            {"measured_until", orNull(heat->measuredUntil)},
            {"total_measured", heat->measuredUntil ? Json(heat->totalBy(*heat->measuredUntil)) : Json()},
            {"past_years", heat->pastYears}, {"is_at_least", heat->isAtLeast},
            {"expected_by_the_end", last ? Json(last->total) : Json()}};
    }
    Json gaps = Json::array();
    for (const CalendarGap gap : found.calendar.gaps) gaps.push_back(gapCodes[static_cast<std::size_t>(gap)]);
    const Json json{{"site", found.site}, {"pest", found.protocol.id}, {"protocol", found.protocol.version},
        {"past_years_of_flights", found.calendar.prior ? found.calendar.prior->years : 0}, {"warmth", warmth},
        {"entries", entries}, {"cannot_be_said", gaps}};
    print(QString::fromStdString(json.dump(2, ' ', false, Json::error_handler_t::replace)));
}

void printWords(const CalendarFound& found)
{
    print(QString::fromStdString(found.site));
    std::vector<QStringList> rows;
    const std::string language = QLocale().name().toStdString();
    for (const CalendarSpan& span : found.calendar.spans)
        rows.push_back(
            {text::calendarWhat(span, found.protocol, language), text::calendarDays(span.from, span.to),
                text::calendarDays(span.earliest, span.latest), text::certainty(span),
                span.source.empty() ? QString() : text::sourceWords(found.protocol, span.source)});
    printTable({said(QT_TRANSLATE_NOOP("Tool", "what")), said(QT_TRANSLATE_NOOP("Tool", "likely")),
                   said(QT_TRANSLATE_NOOP("Tool", "at the widest")),
                   said(QT_TRANSLATE_NOOP("Tool", "how known")), said(QT_TRANSLATE_NOOP("Tool", "source"))},
        rows, {});
    for (const CalendarGap gap : found.calendar.gaps) print(text::gapWords(gap));
    for (const Statement& caution : found.protocol.cautionsAt(CautionPlace::Decision))
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
