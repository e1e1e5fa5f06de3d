// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/base/result.h"

namespace duskrow::formats {

// One row of a table as it was written, and the line of the file on which it begins.
struct CsvRow {
    std::size_t line = 1;
    std::vector<std::string> cells;
};

// The rows of a .csv file, the header among them. Cells are parted by commas, or by semicolons where the
// first line has these and no comma. Lines end in CRLF, LF or CR; a byte order mark and lines without
// anything on them are passed over; bytes that are no UTF-8 are replaced. Rows may differ in length.
//
// Errors  TableUnreadable {line} when a quote is not closed, or something stands behind one that is
// Source  RFC 4180 (CSV)
domain::Result<std::vector<CsvRow>> readCsv(std::string_view bytes);

// How a table is read whose form is known, and how much of it.
struct CsvForm {
    char delimiter = ',';
    std::size_t mostRows = 1'000'000; // the header among them
    std::size_t mostCells = 400; // of a row
};

// Hands over one row after the other, as long as `take` says true. The row is the same object each time.
//
// text    UTF-8 without a mark, as toUtf8 gives it
// Errors  those of readCsv; TableTooLong {rows} and TableUnreadable {line} beyond the bounds of the form
domain::Result<domain::Done> eachCsvRow(
    std::string_view text, const CsvForm& form, const std::function<bool(CsvRow&)>& take);

} // namespace duskrow::formats
