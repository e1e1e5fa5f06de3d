// SPDX-License-Identifier: MIT
#pragma once

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

} // namespace duskrow::formats
