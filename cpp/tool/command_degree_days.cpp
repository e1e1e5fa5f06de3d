// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QLocale>

#include "domain/rules/heat_course.h"
#include "text/amounts.h"
#include "text/error_text.h"
#include "text/heat_text.h"
#include "tool/commands.h"
#include "tool/heat_arguments.h"
#include "tool/json_values.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

constexpr int rowsRefused = 1;

struct DegreeDaysLine {
    TemperatureFileLine file;
    HeatTermsLine terms;
    std::string from;
    bool asJson = false;
};

// The series with its sums: runs of days between long gaps go on from each other.
struct Summed {
    BridgedDays days;
    std::vector<DayHeat> sums;
};

Summed summed(
    const HeatTerms& terms, const std::vector<TemperatureRow>& rows, const std::optional<LocalDay>& from)
{
    std::vector<DayTemperature> measured;
    for (const TemperatureRow& row : rows)
        if (!from || row.day >= *from) measured.push_back({row.day, row.minimum, row.maximum});
    Summed result{bridged(measured), {}};
    result.sums = sumDegreeDays(terms, result.days.days);
    return result;
}

bool isInterpolated(const BridgedDays& days, LocalDay day)
{
    return std::binary_search(days.interpolated.begin(), days.interpolated.end(), day);
}

void printHeatJson(
    const HeatTerms& terms, const formats::TemperatureReading& reading, HeatUnit unit, const Summed& done)
{
    Json rows = Json::array();
    for (std::size_t i = 0; i < done.sums.size(); ++i) {
        const DayTemperature& day = done.days.days[i];
        rows.push_back({{"date", formatDay(day.day)}, {"tmin", day.minimum}, {"tmax", day.maximum},
            {"degree_days", done.sums[i].degreeDays}, {"total", done.sums[i].total},
            {"interpolated", isInterpolated(done.days, day.day)}});
    }
    Json gaps = Json::array();
    for (const DayGap& gap : done.days.gaps)
        gaps.push_back({{"from", formatDay(gap.first)}, {"to", formatDay(gap.last)}, {"days", gap.length()}});
    Json refused = Json::array();
    for (const RowWord& word : reading.refused.words)
        refused.push_back({{"line", word.line}, {"why", text::sentence(word.error).toStdString()}});
    const Json json{{"method", codeOf(terms.method)}, {"unit", codeOf(unit)},
        {"unit_found_by", codeOf(reading.scale.reason)}, {"lower", terms.lower},
        {"upper", terms.upper ? Json(*terms.upper) : Json()}, {"cut_off", codeOf(terms.cutOff)},
        {"total", done.sums.empty() ? 0.0 : done.sums.back().total}, {"is_at_least", !done.days.gaps.empty()},
        {"days", rows.size()}, {"gaps", gaps}, {"refused", refused}, {"rows", rows}};
    print(QString::fromStdString(json.dump(2, ' ', false, Json::error_handler_t::replace)));
}

void printHeatWords(
    const HeatTerms& terms, const formats::TemperatureReading& reading, HeatUnit unit, const Summed& done)
{
    const auto plain = [](double value) { return QLocale().toString(value, 'f', 1); };
    std::vector<QStringList> rows;
    for (std::size_t i = 0; i < done.sums.size(); ++i) {
        const DayTemperature& day = done.days.days[i];
        rows.push_back({QString::fromStdString(formatDay(day.day)), plain(day.minimum), plain(day.maximum),
            QLocale().toString(done.sums[i].degreeDays, 'f', 2),
            QLocale().toString(done.sums[i].total, 'f', 1),
            isInterpolated(done.days, day.day) ? said(QT_TRANSLATE_NOOP("Tool", "interpolated"))
                                               : QString()});
    }
    printTable({said(QT_TRANSLATE_NOOP("Tool", "day")), said(QT_TRANSLATE_NOOP("Tool", "lowest")),
                   said(QT_TRANSLATE_NOOP("Tool", "highest")), said(QT_TRANSLATE_NOOP("Tool", "degree-days")),
                   said(QT_TRANSLATE_NOOP("Tool", "total")), QString()},
        rows, {1, 2, 3, 4});
    print(QStringLiteral("%1, %2%3")
              .arg(text::methodWords(terms.method), text::temperatureWords(terms.lower, unit),
                  terms.upper
                      ? QStringLiteral(" – %1, %2")
                            .arg(text::temperatureWords(*terms.upper, unit), text::cutOffWords(terms.cutOff))
                      : QString()));
    for (const DayGap& gap : done.days.gaps)
        printError(
            said(QT_TRANSLATE_NOOP("Tool",
                     "Nothing was measured from %1 to %2: %3 days are not in the sum, which is a minimum."))
                .arg(
                    QString::fromStdString(formatDay(gap.first)), QString::fromStdString(formatDay(gap.last)))
                .arg(gap.length()));
    for (const RowWord& word : reading.refused.words)
        printError(
            said(QT_TRANSLATE_NOOP("Tool", "Line %1: %2")).arg(word.line).arg(text::sentence(word.error)));
}

Result<int> sayDegreeDays(const DegreeDaysLine& line)
{
    const auto terms = heatTermsOf(line.terms);
    if (!terms) return terms.error();
    std::optional<LocalDay> from;
    if (!line.from.empty()) {
        const auto day = parseDay(line.from);
        if (!day) return day.error();
        from = *day;
    }
    const auto reading = readTemperatureFile(line.file);
    if (!reading) return reading.error();
    // Limits are typed in the degrees of the file: where these look like Fahrenheit, nobody guesses.
    const HeatUnit unit = reading->scale.unit.value_or(HeatUnit::Celsius);
    if (line.file.unit.empty() && unit == HeatUnit::Fahrenheit) return Error{ErrorCode::ScaleUnsaid, {}};
    const Summed done = summed(*terms, reading->rows, from);
    if (line.asJson)
        printHeatJson(*terms, *reading, unit, done);
    else
        printHeatWords(*terms, *reading, unit, done);
    return reading->refused.rows > 0 ? rowsRefused : 0;
}

} // namespace

Work declareDegreeDays(CLI::App& line)
{
    const auto typed = std::make_shared<DegreeDaysLine>();
    addTemperatureFile(line, typed->file);
    addHeatTerms(line, typed->terms);
    line.add_option("--from", typed->from, "The first day that is summed (the first of the file if left out)")
        ->type_name("DAY");
    line.add_flag("--json", typed->asJson, "For other programs: JSON, the total and a row a day");
    return [typed] { return sayDegreeDays(*typed); };
}

} // namespace duskrow::tool
