// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QFile>
#include <QLocale>

#include <cmath>

#include "text/amounts.h"
#include "tool/commands.h"
#include "tool/csv_file.h"
#include "tool/flight_found.h"
#include "tool/heat_arguments.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

struct FlightLine {
    FlightAsked asked{.season = {}, .pest = "bertha-armyworm", .trap = {}, .protocols = {}}; // or a file's
    std::string axis = "day";
    bool asJson = false;
};

bool isStore(const std::string& path)
{
    QFile file(QString::fromStdString(path));
    return file.open(QIODevice::ReadOnly) && file.read(15) == "SQLite format 3";
}

// Rows of a day and the moths since the row before; the first without moths says when the trap was set.
Result<Flights> fromFile(const FlightLine& line)
{
    const auto rows = rowsOfFile(line.asked.season.store);
    if (!rows) return rows.error();
    if (rows->size() < 2) return Error{ErrorCode::TableEmpty, {line.asked.season.store}};
    const auto dayColumn = columnOf(rows->front(), {"date", "day"});
    const auto mothColumn = columnOf(rows->front(), {"moths", "count", "catch"});
    if (!dayColumn) return Error{ErrorCode::ColumnMissing, {"date"}};
    if (!mothColumn) return Error{ErrorCode::ColumnMissing, {"moths"}};
    const auto protocol = protocolOf(line.asked.pest, line.asked.protocols);
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
    Flights flights{.pest = protocol->id, .year = std::chrono::year{yearOf(*before)}};
    const auto prior = protocol->flightModel ? priorOf(*protocol->flightModel, flights.year) : std::nullopt;
    if (!prior) return Error{ErrorCode::Empty, {"flight_model"}};
    auto flight =
        flightPosterior(std::span(&trap, 1), lastLook(std::span(&trap, 1), dayNumber(*before)), *prior);
    if (!flight) return flight.error();
    flights.traps.push_back({line.asked.season.store, std::move(*flight)});
    return flights;
}

// Of an axis that was asked for; a file has counts and no temperatures.
Result<Axis> axisOf(const FlightLine& line, bool hasStore)
{
    if (line.axis == "day") return Axis::Days;
    if (hasStore && line.axis == "degree-days") return Axis::Warmth;
    return Error{ErrorCode::UnknownCode, {"axis", line.axis, hasStore ? "day, degree-days" : "day"}};
}

QString rangeWords(const ChanceRange& range, const OneFlight& one, const Flights& flights)
{
    if (flights.axis == Axis::Days)
        return QStringLiteral("%1 – %2").arg(
            text::shortDay(dayAt(flights.year, range.low)), text::shortDay(dayAt(flights.year, range.high)));
    const QString sums = QStringLiteral("%1 – %2").arg(
        text::number(std::llround(std::max(0.0, range.low))), text::number(std::llround(range.high)));
    const auto low = one.course->reaching(std::max(0.0, range.low)).middle;
    const auto high = one.course->reaching(range.high).middle;
    if (!low || !high) return sums;
    return QStringLiteral("%1 (%2 – %3)").arg(sums, text::shortDay(*low), text::shortDay(*high));
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

void printWithoutWarmth(const Flights& flights)
{
    if (flights.axis == Axis::Days) return;
    print(said(QT_TRANSLATE_NOOP("Tool", "The peak is in degree-days (%1), with the days that reach it."))
              .arg(QString::fromLatin1(codeOf(flights.unit))));
    for (const std::string& name : flights.withoutWarmth)
        print(said(QT_TRANSLATE_NOOP("Tool",
                       "%1: left out, its nearest station has no temperatures that reach over the flight. "
                       "Bring in this year’s and past years with “duskrow-tool temperatures”."))
                  .arg(QString::fromStdString(name)));
}

// A share of the flight is said of several traps together only, and as a range.
void printFlights(const Flights& flights)
{
    std::vector<QStringList> rows;
    for (const OneFlight& one : flights.traps)
        rows.push_back({QString::fromStdString(one.name), text::number(one.flight.moths()),
            phaseWords(one.flight), rangeWords(one.flight.peak(), one, flights), QString()});
    for (const OneFlight& one : flights.districts) {
        const auto percent = [](double part) { return QLocale().toString(part * 100, 'f', 0); };
        rows.push_back({QString::fromStdString(one.name), text::number(one.flight.moths()),
            phaseWords(one.flight), rangeWords(one.flight.peak(), one, flights),
            QStringLiteral("%1–%2 %").arg(percent(one.flight.part().low), percent(one.flight.part().high))});
    }
    printTable({said(QT_TRANSLATE_NOOP("Tool", "trap or district")), said(QT_TRANSLATE_NOOP("Tool", "moths")),
                   said(QT_TRANSLATE_NOOP("Tool", "flight")), said(QT_TRANSLATE_NOOP("Tool", "peak")),
                   said(QT_TRANSLATE_NOOP("Tool", "over by the last count"))},
        rows, {1});
    printWithoutWarmth(flights);
    print(said(QT_TRANSLATE_NOOP("Tool",
                   "Ranges hold nine times in ten where flights are as in the model. Past years of this "
                   "store in it: %1."))
              .arg(flights.pastYears));
}

Result<int> sayFlight(FlightLine& line)
{
    const bool hasStore = isStore(line.asked.season.store);
    const auto axis = axisOf(line, hasStore);
    if (!axis) return axis.error();
    line.asked.axis = *axis;
    const auto flights = hasStore ? flightsOfStore(line.asked) : fromFile(line);
    if (!flights) return flights.error();
    if (line.asJson)
        print(QString::fromStdString(
            flightsJson(*flights).dump(2, ' ', false, Json::error_handler_t::replace)));
    else
        printFlights(*flights);
    return 0;
}

} // namespace

Work declareFlight(CLI::App& line)
{
    const auto typed = std::make_shared<FlightLine>();
    addSeason(line, typed->asked.season);
    line.add_option("--trap", typed->asked.trap, "One trap: its site, its tag, or both")->type_name("NAME");
    line.add_option("--pest", typed->asked.pest, "The pest (bertha-armyworm if left out)")->type_name("ID");
    line.add_option("--axis", typed->axis,
            "day or degree-days, where the store has temperatures that reach over the flight (day if left "
            "out)")
        ->type_name("NAME");
    line.add_flag("--json", typed->asJson, "For other programs: JSON");
    addProtocols(line, typed->asked.protocols);
    return [typed] { return sayFlight(*typed); };
}

} // namespace duskrow::tool
