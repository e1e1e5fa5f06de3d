// SPDX-License-Identifier: MIT
#include "tool/frame_arguments.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

#include <algorithm>
#include <array>
#include <functional>
#include <map>

#include "domain/rules/frame_estimate.h"
#include "text/frame_text.h"
#include "tool/arguments.h"
#include "tool/csv_file.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using formats::CsvRow;

namespace {

struct FrameColumns {
    std::size_t larvae = 0;
    std::optional<std::size_t> frames = 1;
    std::optional<std::size_t> stop = {};
    bool areNamed = false;
};

// The first row names the columns unless it begins like a number.
Result<FrameColumns> frameColumnsOf(const CsvRow& row, const std::string& path)
{
    static const QRegularExpression number(QStringLiteral("^\\s*[-+.,0-9]"));
    const auto first = std::find_if_not(row.cells.begin(), row.cells.end(), std::mem_fn(&std::string::empty));
    if (first == row.cells.end() || number.match(QString::fromStdString(*first)).hasMatch())
        return FrameColumns{};
    const auto larvae = columnOf(row, {"larvae"});
    if (!larvae) return Error{ErrorCode::TableNoColumn, {path, "larvae"}};
    return FrameColumns{*larvae, columnOf(row, {"frames"}), columnOf(row, {"stop"}), true};
}

QString cellAt(const CsvRow& row, std::optional<std::size_t> column)
{
    const bool isThere = column && *column < row.cells.size();
    return isThere ? QString::fromStdString(row.cells[*column]).trimmed() : QString();
}

std::optional<std::int64_t> wholeIn(const QString& cell, std::int64_t low, std::int64_t high)
{
    static const QRegularExpression whole(QStringLiteral("^\\+?[0-9]{1,9}$"));
    if (!whole.match(cell).hasMatch()) return std::nullopt;
    const std::int64_t number = cell.toLongLong();
    if (number < low || number > high) return std::nullopt;
    return number;
}

std::optional<FrameStop> stopIn(const CsvRow& row, const FrameColumns& columns)
{
    // A number too many in a row without names is a slip: one count a row.
    if (!columns.areNamed && row.cells.size() > 2) return std::nullopt;
    const auto larvae = wholeIn(cellAt(row, columns.larvae), 0, mostLarvaeAtAStop);
    if (!larvae) return std::nullopt;
    FrameStop stop{Larvae{*larvae}};
    const QString several = cellAt(row, columns.frames);
    if (several.isEmpty()) return stop;
    const auto frames = wholeIn(several, 1, mostFramesAtAStop);
    if (!frames) return std::nullopt;
    stop.frames = Frames{*frames};
    return stop;
}

std::string joined(const CsvRow& row)
{
    std::string text;
    for (const std::string& cell : row.cells) text += (&cell == &row.cells.front() ? "" : ",") + cell;
    return text;
}

// The rows of a table as stops: those that name the same stop are one unit.
class StopRows {
public:
    explicit StopRows(const FrameColumns& columns) : m_columns(columns) { }

    Result<Done> add(const CsvRow& row, const std::string& path)
    {
        const std::string line = std::to_string(row.line);
        const auto found = stopIn(row, m_columns);
        if (!found) return Error{ErrorCode::TableRow, {path, line, joined(row)}};
        const QString named = cellAt(row, m_columns.stop);
        if (named.isEmpty()) {
            stops.push_back(*found);
            return Done{};
        }
        const auto number = wholeIn(named, 1, mostStops);
        if (!number) return Error{ErrorCode::TableRow, {path, line, named.toStdString(), "stop"}};
        const auto [at, isNew] = m_places.try_emplace(*number, stops.size());
        if (isNew) stops.push_back({Larvae{0}, Frames{0}});
        stops[at->second].larvae += found->larvae;
        stops[at->second].frames += found->frames;
        return Done{};
    }

    std::vector<FrameStop> stops;

private:
    const FrameColumns& m_columns;
    std::map<std::int64_t, std::size_t> m_places; // of the stops that have a number
};

} // namespace

void addFrameOptions(CLI::App& line, FrameLine& typed)
{
    line.add_option(
            "--frame-m2", typed.frame, "Area of a frame in square metres (the protocol's if left out)")
        ->type_name("M2");
    line.add_option("--dispersion", typed.dispersion,
            "How unevenly larvae lie: k from 0.2, very patchy, to 1000, by chance alone (1 if left out)")
        ->type_name("K");
    line.add_option(
            "--pest", typed.pest, "The pest whose frame and cautions hold (bertha-armyworm if left out)")
        ->type_name("PROTOCOL");
    addProtocols(line, typed.protocols);
    line.add_flag("--json", typed.asJson, "For other programs: JSON");
}

Result<double> positiveNumber(const std::string& text, const char* field, const char* low, const char* high)
{
    static const QRegularExpression number(QStringLiteral("^[+-]?([0-9]+([.,][0-9]*)?|[.,][0-9]+)$"));
    const QString typed = QString::fromStdString(text).trimmed();
    if (!number.match(typed).hasMatch()) return Error{ErrorCode::NotANumber, {text}};
    const double value = QString(typed).replace(u',', u'.').toDouble();
    if (!(value > 0.0)) return Error{ErrorCode::OutOfRange, {field, low, high}};
    return value;
}

Result<SquareMetres> frameOf(const FrameLine& typed, const Protocol& protocol)
{
    if (typed.frame.empty()) return frameAreaOf(protocol);
    const auto area = positiveNumber(typed.frame, "frame_m2", "0.01", "10");
    if (!area) return area.error();
    return SquareMetres{*area};
}

Result<double> dispersionOf(const FrameLine& typed)
{
    if (typed.dispersion.empty()) return StopDesign{}.dispersion;
    const auto dispersion = positiveNumber(typed.dispersion, "dispersion", "0.2", "1000");
    if (!dispersion) return dispersion.error();
    if (*dispersion < 0.2 || *dispersion > 1000.0)
        return Error{ErrorCode::OutOfRange, {"dispersion", "0.2", "1000"}};
    return *dispersion;
}

Result<StopPlan> planOf(const FrameLine& typed, const Protocol& protocol, SquareMetres areaOfAStop)
{
    const std::string highest =
        std::to_string(std::llround(std::floor(mostLarvaeOfAPlan / areaOfAStop.value())));
    const auto threshold = positiveNumber(typed.threshold, "threshold_per_m2", "1", highest.c_str());
    if (!threshold) return threshold.error();
    StopDesign design = stopDesignOf(protocol, LarvaePerSquareMetre{*threshold});
    design.areaOfAStop = areaOfAStop;
    const auto dispersion = dispersionOf(typed);
    if (!dispersion) return dispersion.error();
    design.dispersion = *dispersion;
    return planStops(design);
}

Result<std::vector<FrameStop>> stopsIn(const std::string& path)
{
    const auto rows = rowsOfFile(path);
    if (!rows) return rows.error();
    if (rows->empty()) return Error{ErrorCode::TableEmpty, {path}};
    const auto columns = frameColumnsOf(rows->front(), path);
    if (!columns) return columns.error();
    StopRows read(*columns);
    for (std::size_t i = columns->areNamed ? 1 : 0; i < rows->size(); ++i)
        if (const auto added = read.add((*rows)[i], path); !added) return added.error();
    if (read.stops.empty()) return Error{ErrorCode::TableEmpty, {path}};
    return read.stops;
}

Result<Done> printErrorRates(const StopPlan& plan)
{
    const LarvaePerSquareMetre threshold = plan.design.threshold;
    const double et = threshold.value();
    const std::array densities{LarvaePerSquareMetre{et / 1.5}, threshold, LarvaePerSquareMetre{1.5 * et}};
    const auto rows = operatingTable(plan, densities, plan.design.dispersion);
    if (!rows) return rows.error();
    print(QCoreApplication::translate(
        "Tool", "How often walks by this rule err where larvae are as patchy as assumed (k = %1):")
              .arg(QLocale().toString(plan.design.dispersion)));
    for (const OperatingRow& row : *rows) print(text::operatingSentence(row, threshold));
    return Done{};
}

void printDecisionCautions(const Protocol& protocol)
{
    const std::string language = QLocale().name().toStdString();
    for (const Statement& caution : protocol.cautionsAt(CautionPlace::Decision))
        print(QString::fromStdString(caution.text.in(language)));
}

} // namespace duskrow::tool
