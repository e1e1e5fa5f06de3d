// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/base/result.h"

namespace duskrow::formats {

// A cell without a value was not observed; an empty text was observed to be empty.
using Cell = std::optional<std::string>;

// name  for the file: lower-case letters, digits and hyphens
// rows  each as long as the header
struct Table {
    std::string name = {};
    std::vector<std::string> header;
    std::vector<std::vector<Cell>> rows;
};

enum class ByteOrderMark { Absent, Present };

// The table as the bytes of a .csv file: UTF-8, comma, CRLF. A cell without a value is nothing between two
// commas, an empty text is "". In a table of one column both are "", for readers skip an empty line.
//
// mark    Present for spreadsheets that take a file without it for some other encoding
// Errors  OutOfRange {"cells", n, n} when a row has not the n cells of the header
// Source  RFC 4180 (CSV); RFC 3629 (UTF-8)
domain::Result<std::string> writeCsv(const Table& table, ByteOrderMark mark = ByteOrderMark::Absent);

// A cell that a spreadsheet would run as a formula (it begins with = + - @, a tab or a carriage return, and
// is no plain number) gets an apostrophe in front. So does one that begins with apostrophes before such a
// sign: unguardedCell gives back exactly what was guarded.
std::string guardedCell(std::string_view text);
std::string unguardedCell(std::string_view cell);

} // namespace duskrow::formats
