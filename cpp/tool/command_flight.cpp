// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QFile>
#include <QLocale>

#include "text/amounts.h"
#include "tool/commands.h"
#include "tool/csv_file.h"
#include "tool/flight_found.h"
#include "tool/output.h"
#include "tool/season_asked.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

struct FlightLine {
    SeasonAsked asked; // the store, or a file of counts
    std::string pest = "bertha-armyworm";
    std::string trap;
    std::string protocols;
    bool asJson = false;
};

bool isStore(const std::string& path)
{
    QFile file(QString::fromStdString(path));
    return file.open(QIODevice::ReadOnly) && file.read(15) == "SQLite format 3";
}

struct OneFlight {
    std::string name;
    FlightPosterior flight;
};

struct Flights {
    std::string pest;
    std::chrono::year year{};
    std::size_t pastYears = 0;
    std::vector<OneFlight> traps;
    std::vector<OneFlight> districts;
};

Result<Done> addTo(std::vector<OneFlight>& all, std::string name, std::span<const TrapFlight> traps,
    const FlightPrior& prior, LocalDay today)
{
    const auto flight = flightPosterior(traps, lastLook(traps, dayNumber(today)), prior);
    if (!flight) return flight.error();
    all.push_back({std::move(name), *flight});
    return Done{};
}

// Rows of a day and the moths since the row before; the first without moths says when the trap was set.
Result<Flights> fromFile(const FlightLine& line)
{
    const auto rows = rowsOfFile(line.asked.store);
    if (!rows) return rows.error();
    if (rows->size() < 2) return Error{ErrorCode::TableEmpty, {line.asked.store}};
    const auto dayColumn = columnOf(rows->front(), {"date", "day"});
    const auto mothColumn = columnOf(rows->front(), {"moths", "count", "catch"});
    if (!dayColumn) return Error{ErrorCode::ColumnMissing, {"date"}};
    if (!mothColumn) return Error{ErrorCode::ColumnMissing, {"moths"}};
    const auto protocol = protocolOf(line.pest, line.protocols);
    if (!protocol) return protocol.error();
    TrapFlight trap;
    std::optional<LocalDay> before;
    for (std::size_t i = 1; i < rows->size(); ++i) {
        const auto& cells = (*rows)[i].cells;
        const auto cell = [&](std::size_t column) {
            return column < cells.size() ? cells[column] : std::string();
        };
        const auto day = parseDay(cell(*dayColumn));
        if (!day) return day.error();
        if (!cell(*mothColumn).empty() && before) {
            const auto moths = wholeNumber(cell(*mothColumn), "pest", 0, 999'999);
            if (!moths) return moths.error();
            trap.push_back({dayNumber(*before), dayNumber(*day), *moths});
        }
        before = *day;
    }
    Flights flights{protocol->id, std::chrono::year{yearOf(*before)}, 0, {}, {}};
    const auto prior = protocol->flightModel ? priorOf(*protocol->flightModel, flights.year) : std::nullopt;
    if (!prior) return Error{ErrorCode::Empty, {"flight_model"}};
    if (const auto added = addTo(flights.traps, line.asked.store, std::span(&trap, 1), *prior, *before);
        !added)
        return added.error();
    return flights;
}

Result<Flights> fromStore(const FlightLine& line)
{
    const auto seen = lookAt(line.asked);
    if (!seen) return seen.error();
    auto records = namedRecords(*seen->reader, seen->season, store::VisitsFor::Catch);
    if (!records) return records.error();
    if (!line.trap.empty()) {
        const auto trap = trapNamed(*records, line.trap);
        if (!trap) return trap.error();
        records->traps = {*trap};
    }
    ProtocolShelf shelf(line.protocols);
    const auto results = trapResults(*records, seen->today, shelf);
    if (!results) return results.error();
    Flights flights{line.pest, std::chrono::year{seen->season.year.value_or(yearOf(seen->today))}, 0, {}, {}};
    std::map<std::string, PriorOfPast> priors; // by trap type
    std::map<std::string, std::pair<std::vector<TrapFlight>, FlightPrior>> districts;
    for (const TrapResult& result : *results) {
        if (result.trap->pest != line.pest) continue;
        auto prior = priors.find(result.trap->trapType);
        if (prior == priors.end()) {
            const auto found =
                priorFor(*seen->reader, *result.protocol, result.trap->trapType, flights.year, seen->today);
            if (!found) return found.error();
            prior = priors.emplace(result.trap->trapType, *found).first;
        }
        flights.pastYears = std::max(flights.pastYears, prior->second.years);
        const TrapFlight trap = flightOf(result.season);
        const auto added = addTo(flights.traps, records->title(*result.trap).toStdString(),
            std::span(&trap, 1), prior->second.prior, seen->today);
        if (!added) return added.error();
        auto& district = districts[records->districtOf(*result.trap).toStdString()];
        district.first.push_back(trap);
        district.second = prior->second.prior;
    }
    for (const auto& [name, district] : districts)
        if (const auto added = addTo(flights.districts, name, district.first, district.second, seen->today);
            !added)
            return added.error();
    return flights;
}

Json listJson(const std::vector<OneFlight>& all, std::chrono::year year, const char* key)
{
    Json list = Json::array();
    for (const OneFlight& one : all) {
        Json json = flightJson(one.flight, year);
        json[key] = one.name;
        list.push_back(std::move(json));
    }
    return list;
}

QString daysOf(const ChanceRange& range, std::chrono::year year)
{
    return QStringLiteral("%1 – %2").arg(
        text::shortDay(dayAt(year, range.low)), text::shortDay(dayAt(year, range.high)));
}

QString phaseWords(const FlightPosterior& flight)
{
    switch (flight.stage()) {
    case FlightStage::CannotTell:
        return flight.isPriorOnly() ? said(QT_TRANSLATE_NOOP("Tool", "expected only"))
                                    : said(QT_TRANSLATE_NOOP("Tool", "cannot be told"));
    case FlightStage::Early:
        return said(QT_TRANSLATE_NOOP("Tool", "early"));
    case FlightStage::AroundPeak:
        return said(QT_TRANSLATE_NOOP("Tool", "around the peak"));
    case FlightStage::PastPeak:
        return said(QT_TRANSLATE_NOOP("Tool", "past the peak"));
    }
    return {};
}

// A share of the flight is said of several traps together only, and as a range.
void printFlights(const Flights& flights)
{
    std::vector<QStringList> rows;
    for (const OneFlight& one : flights.traps)
        rows.push_back({QString::fromStdString(one.name), text::number(one.flight.moths()),
            phaseWords(one.flight), daysOf(one.flight.peak(), flights.year), QString()});
    for (const OneFlight& one : flights.districts) {
        const auto percent = [](double part) { return QLocale().toString(part * 100, 'f', 0); };
        rows.push_back({QString::fromStdString(one.name), text::number(one.flight.moths()),
            phaseWords(one.flight), daysOf(one.flight.peak(), flights.year),
            QStringLiteral("%1–%2 %").arg(percent(one.flight.part().low), percent(one.flight.part().high))});
    }
    printTable({said(QT_TRANSLATE_NOOP("Tool", "trap or district")), said(QT_TRANSLATE_NOOP("Tool", "moths")),
                   said(QT_TRANSLATE_NOOP("Tool", "flight")), said(QT_TRANSLATE_NOOP("Tool", "peak")),
                   said(QT_TRANSLATE_NOOP("Tool", "over by the last count"))},
        rows, {1});
    print(said(QT_TRANSLATE_NOOP("Tool",
                   "Ranges hold nine times in ten where flights are as in the model. Past years of this "
                   "store in it: %1."))
              .arg(flights.pastYears));
}

Result<int> sayFlight(const FlightLine& line)
{
    const auto flights = isStore(line.asked.store) ? fromStore(line) : fromFile(line);
    if (!flights) return flights.error();
    if (!line.asJson) {
        printFlights(*flights);
        return 0;
    }
    const Json json{{"pest", flights->pest}, {"year", static_cast<int>(flights->year)},
        {"past_years", flights->pastYears}, {"traps", listJson(flights->traps, flights->year, "trap")},
        {"districts", listJson(flights->districts, flights->year, "district")}};
    print(QString::fromStdString(json.dump(2, ' ', false, Json::error_handler_t::replace)));
    return 0;
}

} // namespace

Work declareFlight(CLI::App& line)
{
    const auto typed = std::make_shared<FlightLine>();
    addSeason(line, typed->asked);
    line.add_option("--trap", typed->trap, "One trap: its site, its tag, or both")->type_name("NAME");
    line.add_option("--pest", typed->pest, "The pest (bertha-armyworm if left out)")->type_name("ID");
    line.add_flag("--json", typed->asJson, "For other programs: JSON");
    addProtocols(line, typed->protocols);
    return [typed] { return sayFlight(*typed); };
}

} // namespace duskrow::tool
