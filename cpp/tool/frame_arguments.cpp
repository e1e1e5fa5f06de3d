// SPDX-License-Identifier: MIT
#include "tool/frame_arguments.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>
#include <QRegularExpression>

#include <array>

#include "domain/rules/frame_estimate.h"
#include "text/frame_text.h"
#include "tool/arguments.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

// As a file of frames is written by hand; a larger one is no list of frames.
constexpr qint64 largestFile = 4'000'000; // bytes

struct Columns {
    qsizetype larvae = 0;
    qsizetype frames = 1;
    bool areNamed = false;
};

// A comma inside quotes parts nothing. Quotes themselves are dropped: no count and no name has one.
QStringList cellsOf(const QString& row)
{
    QStringList cells{QString()};
    bool isQuoted = false;
    for (const QChar sign : row) {
        if (sign == u'"')
            isQuoted = !isQuoted;
        else if (sign == u',' && !isQuoted)
            cells << QString();
        else
            cells.back() += sign;
    }
    for (QString& cell : cells) cell = cell.trimmed();
    return cells;
}

// The first row names the columns unless it begins like a number.
Result<Columns> columnsOf(const QString& row, const std::string& path)
{
    static const QRegularExpression number(QStringLiteral("^\\s*\"?\\s*[-+.,0-9]"));
    if (number.match(row).hasMatch()) return Columns{};
    QStringList names = cellsOf(row);
    for (QString& name : names) name = name.toLower();
    const Columns columns{
        names.indexOf(QStringLiteral("larvae")), names.indexOf(QStringLiteral("frames")), true};
    if (columns.larvae < 0) return Error{ErrorCode::TableNoColumn, {path, "larvae"}};
    return columns;
}

std::optional<std::int64_t> wholeIn(
    const QStringList& cells, qsizetype column, std::int64_t low, std::int64_t high)
{
    static const QRegularExpression whole(QStringLiteral("^\\+?[0-9]{1,9}$"));
    if (column >= cells.size() || !whole.match(cells[column]).hasMatch()) return std::nullopt;
    const std::int64_t number = cells[column].toLongLong();
    if (number < low || number > high) return std::nullopt;
    return number;
}

std::optional<FrameStop> stopIn(const QStringList& cells, const Columns& columns)
{
    const auto larvae = wholeIn(cells, columns.larvae, 0, mostLarvaeAtAStop);
    if (!larvae) return std::nullopt;
    FrameStop stop{Larvae{*larvae}};
    const bool hasFrames = columns.frames >= 0 && columns.frames < cells.size();
    if (hasFrames && !cells[columns.frames].isEmpty()) {
        const auto frames = wholeIn(cells, columns.frames, 1, mostFramesAtAStop);
        if (!frames) return std::nullopt;
        stop.frames = Frames{*frames};
    }
    // A number too many in a row without names is a slip: one count a row.
    if (!columns.areNamed && cells.size() > 2) return std::nullopt;
    return stop;
}

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
    QFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly) || file.size() > largestFile)
        return Error{ErrorCode::FileUnreadable, {path}};
    QString text = QString::fromUtf8(file.readAll());
    if (text.startsWith(QChar(QChar::ByteOrderMark))) text.remove(0, 1);
    std::optional<Columns> columns;
    std::vector<FrameStop> stops;
    int number = 0;
    for (const QString& row : text.split(u'\n')) {
        ++number;
        if (row.trimmed().isEmpty()) continue;
        if (!columns) {
            const auto found = columnsOf(row, path);
            if (!found) return found.error();
            columns = *found;
            if (columns->areNamed) continue;
        }
        const auto stop = stopIn(cellsOf(row), *columns);
        if (!stop)
            return Error{ErrorCode::TableRow, {path, std::to_string(number), row.trimmed().toStdString()}};
        stops.push_back(*stop);
    }
    if (stops.empty()) return Error{ErrorCode::TableEmpty, {path}};
    return stops;
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
