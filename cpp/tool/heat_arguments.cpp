// SPDX-License-Identifier: MIT
#include "tool/heat_arguments.h"

#include <QFile>

#include <array>
#include <charconv>
#include <cmath>

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

constexpr qint64 mostMiB = 64;
constexpr std::array methods{
    "average", "average-clamped", "single-triangle", "double-triangle", "single-sine", "double-sine"};
constexpr std::array cutOffs{"none", "horizontal", "intermediate", "vertical"};

template <std::size_t N>
std::string listed(const std::array<const char*, N>& codes)
{
    std::string all;
    for (const char* code : codes) all += (all.empty() ? "" : ", ") + std::string(code);
    return all;
}

template <typename Choice, std::size_t N>
Result<Choice> chosen(const std::array<const char*, N>& codes, const char* field, const std::string& typed)
{
    for (std::size_t i = 0; i < N; ++i)
        if (typed == codes[i]) return static_cast<Choice>(i);
    return Error{ErrorCode::UnknownCode, {field, typed, listed(codes)}};
}

Result<double> degrees(const std::string& typed)
{
    double value = 0.0;
    const char* const end = typed.data() + typed.size();
    const auto read = std::from_chars(typed.data(), end, value, std::chars_format::fixed);
    if (typed.empty() || read.ec != std::errc{} || read.ptr != end || !std::isfinite(value))
        return Error{ErrorCode::NotANumber, {typed}};
    return value;
}

} // namespace

const char* codeOf(HeatMethod method)
{
    return methods[static_cast<std::size_t>(method)];
}

const char* codeOf(CutOff cutOff)
{
    return cutOffs[static_cast<std::size_t>(cutOff)];
}

const char* codeOf(HeatUnit unit)
{
    return unit == HeatUnit::Celsius ? "C" : "F";
}

const char* codeOf(ScaleReason reason)
{
    switch (reason) {
    case ScaleReason::Heading:
        return "heading";
    case ScaleReason::Values:
        return "values";
    case ScaleReason::Unsaid:
        return "unsaid";
    case ScaleReason::Chosen:
        return "chosen";
    }
    return "";
}

void addTemperatureFile(CLI::App& line, TemperatureFileLine& typed)
{
    line.add_option("FILE", typed.file, "Daily temperatures as .csv: date, tmin, tmax")->required();
    line.add_option("--unit", typed.unit, "C or F, of the file and of all limits")->type_name("UNIT");
    line.add_option("--date-order", typed.dayOrder, "Which comes first in 03/04/2019: day or month")
        ->type_name("ORDER");
    line.add_option("--decimal", typed.decimalMark, "point or comma (found if left out)")->type_name("NAME");
    line.add_option("--map", typed.columns, "What a column holds: \"Air low=minimum\", 4=maximum, Local=date")
        ->type_name("COLUMN=FIELD");
}

Result<formats::TemperatureReading> readTemperatureFile(const TemperatureFileLine& typed)
{
    formats::TemperatureChoices choices;
    if (typed.dayOrder == "day" || typed.dayOrder == "month")
        choices.dayOrder = typed.dayOrder == "day" ? DayOrder::DayFirst : DayOrder::MonthFirst;
    else if (!typed.dayOrder.empty())
        return Error{ErrorCode::UnknownCode, {"date_order", typed.dayOrder, "day, month"}};
    if (typed.decimalMark == "point" || typed.decimalMark == "comma")
        choices.decimalMark = typed.decimalMark == "point" ? DecimalMark::Point : DecimalMark::Comma;
    else if (!typed.decimalMark.empty())
        return Error{ErrorCode::UnknownCode, {"decimal", typed.decimalMark, "point, comma"}};
    if (typed.unit == "C" || typed.unit == "F")
        choices.unit = typed.unit == "C" ? HeatUnit::Celsius : HeatUnit::Fahrenheit;
    else if (!typed.unit.empty())
        return Error{ErrorCode::UnknownCode, {"unit", typed.unit, "C, F"}};
    for (const std::string& one : typed.columns) {
        const std::size_t sign = one.rfind('=');
        if (sign == std::string::npos) return Error{ErrorCode::UnknownCode, {"column", one, "COLUMN=FIELD"}};
        choices.columns.push_back({one.substr(0, sign), one.substr(sign + 1)});
    }
    QFile file(QString::fromStdString(typed.file));
    if (!file.open(QIODevice::ReadOnly)) return Error{ErrorCode::FileUnreadable, {typed.file}};
    const QByteArray bytes = file.read(mostMiB * 1024 * 1024 + 1);
    if (file.error() != QFileDevice::NoError) return Error{ErrorCode::FileUnreadable, {typed.file}};
    if (bytes.size() > mostMiB * 1024 * 1024)
        return Error{ErrorCode::FileTooLarge, {typed.file, std::to_string(mostMiB)}};
    auto reading = formats::readTemperatures(bytes.toStdString(), choices);
    if (!reading && reading.error().code == ErrorCode::TableEmpty)
        return Error{ErrorCode::TableEmpty, {typed.file}};
    return reading;
}

void addHeatTerms(CLI::App& line, HeatTermsLine& typed)
{
    line.add_option("--method", typed.method, listed(methods) + " (single-sine if left out)")
        ->type_name("NAME");
    line.add_option("--lower", typed.lower, "The lower limit, in the degrees of the file")
        ->required()
        ->type_name("DEGREES");
    line.add_option("--upper", typed.upper, "The upper limit")->type_name("DEGREES");
    line.add_option("--cut-off", typed.cutOff,
            listed(cutOffs) + " (horizontal if there is an upper limit, else none)")
        ->type_name("NAME");
}

Result<HeatTerms> heatTermsOf(const HeatTermsLine& typed)
{
    HeatTerms terms;
    const auto method = chosen<HeatMethod>(methods, "method", typed.method);
    if (!method) return method.error();
    terms.method = *method;
    const auto lower = degrees(typed.lower);
    if (!lower) return lower.error();
    terms.lower = *lower;
    if (!typed.upper.empty()) {
        const auto upper = degrees(typed.upper);
        if (!upper) return upper.error();
        terms.upper = *upper;
        terms.cutOff = CutOff::Horizontal;
    }
    if (!typed.cutOff.empty()) {
        const auto cutOff = chosen<CutOff>(cutOffs, "cut_off", typed.cutOff);
        if (!cutOff) return cutOff.error();
        terms.cutOff = *cutOff;
    }
    const auto checked = checkTerms(terms);
    return checked ? Result<HeatTerms>(terms) : checked.error();
}

} // namespace duskrow::tool
