// SPDX-License-Identifier: MIT
#include "formats/temperature_reading.h"

#include <algorithm>
#include <map>

#include "domain/base/uuid.h"
#include "formats/csv_reader.h"

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

// Of two rows for one day the first stands; one that says something else is refused.
void putInOrder(TemperatureReading& reading)
{
    std::map<LocalDay, TemperatureRow> byDay;
    for (const TemperatureRow& row : reading.rows) {
        const auto [there, isNew] = byDay.emplace(row.day, row);
        if (isNew) continue;
        if (there->second.minimum == row.minimum && there->second.maximum == row.maximum)
            ++reading.repeated;
        else
            reading.refused.add(
                {row.line, {}, {ErrorCode::TemperatureKept, {std::to_string(there->second.line)}}});
    }
    reading.rows.clear();
    for (auto& [day, row] : byDay) reading.rows.push_back(row);
}

} // namespace

Result<TemperatureReading> readTemperatures(std::string_view bytes, const TemperatureChoices& choices)
{
    TemperatureReading reading;
    reading.hash = formatHex(hashOf(bytes));
    reading.encoding = encodingOf(bytes);
    const std::string text = toUtf8(bytes, reading.encoding.encoding);
    reading.delimiter = delimiterOf(text);
    const CsvForm form{.delimiter = reading.delimiter.delimiter};
    const auto first = eachCsvRow(text, form, [&](CsvRow& row) {
        reading.header = row.cells;
        return false;
    });
    if (!first) return first.error();
    if (reading.header.empty()) return Error{ErrorCode::TableEmpty, {""}};
    const auto columns = temperatureColumns(reading.header, choices.columns);
    if (!columns) return columns.error();
    reading.columns = *columns;
    const auto eachRow = [&](const auto& use) {
        bool isHeader = true;
        return eachCsvRow(text, form, [&](CsvRow& row) {
            if (!std::exchange(isHeader, false)) use(row);
            return true;
        });
    };
    TemperatureSurvey survey(reading.header, *columns);
    bool isAnything = false;
    const auto surveyed = eachRow([&](const CsvRow& row) {
        survey.take(row.cells);
        isAnything = true;
    });
    if (!surveyed) return surveyed.error();
    if (!isAnything) return Error{ErrorCode::TableEmpty, {""}};
    reading.dayOrder = survey.dayOrder();
    if (choices.dayOrder) reading.dayOrder = {choices.dayOrder, DayOrderReason::Chosen};
    reading.decimalMark = survey.decimalMark();
    if (choices.decimalMark) reading.decimalMark = {choices.decimalMark, DecimalReason::Chosen};
    reading.scale = survey.scale();
    if (choices.unit) reading.scale = {choices.unit, ScaleReason::Chosen};
    const TemperatureTerms terms{*columns, reading.dayOrder.order, reading.decimalMark.mark,
        reading.scale.unit.value_or(HeatUnit::Celsius)};
    const auto read = eachRow([&](const CsvRow& row) {
        if (const auto found = readTemperatureRow(terms, row.line, row.cells, reading.refused))
            reading.rows.push_back(*found);
    });
    if (!read) return read.error();
    putInOrder(reading);
    return reading;
}

} // namespace duskrow::formats
