// SPDX-License-Identifier: MIT
#pragma once

#include "domain/import/temperature_table.h"
#include "formats/delimiter.h"
#include "formats/encoding.h"

namespace duskrow::formats {

// What a person chose; all else is found by looking at the file.
struct TemperatureChoices {
    std::optional<domain::DayOrder> dayOrder = {};
    std::optional<domain::DecimalMark> decimalMark = {};
    std::optional<domain::HeatUnit> unit = {};
    std::vector<domain::ColumnChoice> columns = {}; // "Air low=minimum"
};

// A table of daily temperatures as it was read, with all that was found about it and why.
struct TemperatureReading {
    std::string hash; // of the bytes
    EncodingFinding encoding;
    DelimiterFinding delimiter;
    domain::DayOrderFinding dayOrder;
    domain::DecimalFinding decimalMark;
    domain::ScaleFinding scale;
    std::vector<std::string> header;
    domain::TemperatureColumns columns;
    std::vector<domain::TemperatureRow> rows; // by day, each day once; as the file has them where no scale is
                                              // known
    std::size_t repeated = 0; // rows that say again what an earlier row says
    domain::RowWords refused;
};

// Reads a table of daily minima and maxima: .csv as weather services write it, names of columns in its first
// row.
//
// Errors  those of eachCsvRow, temperatureColumns; TableEmpty {} without any row below the names
domain::Result<TemperatureReading> readTemperatures(
    std::string_view bytes, const TemperatureChoices& choices);

} // namespace duskrow::formats
