// SPDX-License-Identifier: MIT
#pragma once

#include "domain/import/count_row.h"
#include "formats/delimiter.h"
#include "formats/encoding.h"

namespace duskrow::formats {

// What a person chose; all else is found by looking at the file.
struct ImportChoices {
    std::optional<Encoding> encoding = {};
    std::optional<char> delimiter = {};
    std::optional<domain::DayOrder> dayOrder = {};
    std::optional<domain::DecimalMark> decimalMark = {};
    std::optional<int> year = {}; // that all days lie in
    std::optional<int> weekStart = {}; // of the programme, for headings that are weeks
    std::vector<domain::ColumnChoice> columns = {};
};

// A table of counts as it was read, with all that was found about it and why.
struct ImportReading {
    std::string hash; // of the bytes: the same file is known by it
    EncodingFinding encoding;
    DelimiterFinding delimiter;
    domain::DayOrderFinding dayOrder;
    domain::DecimalFinding decimalMark;
    domain::ColumnMap columns;
    std::vector<std::vector<std::string>> samples; // the first rows, as they stand there
    std::vector<domain::CountRow> rows;
    domain::RowWords refused;
};

inline constexpr std::size_t mostImportMiB = 64;

// Reads a table of counts: .csv as spreadsheets write it, the names of its columns in its first row.
//
// bytes   of the file; the caller keeps to mostImportMiB
// Errors  those of eachCsvRow, columnMap and checkNeeded; TableEmpty {} without any row below the names
domain::Result<ImportReading> readCounts(std::string_view bytes, const ImportChoices& choices);

// The form and the columns alone, and the first rows: for one who is to say what the columns hold.
//
// Errors  as readCounts, but for what columns lack
domain::Result<ImportReading> lookAtTable(std::string_view bytes, const ImportChoices& choices);

} // namespace duskrow::formats
