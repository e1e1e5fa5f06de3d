// SPDX-License-Identifier: MIT
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <vector>

#include "formats/csv_reader.h"

namespace duskrow::tool {

// The rows of a table that a person wrote; rows without anything in their cells are passed over.
//
// Errors  FileUnreadable {path}, for a file larger than 10 MB too; those of readCsv
domain::Result<std::vector<formats::CsvRow>> rowsOfFile(const std::string& path);

// Where a column of one of these names stands, whatever the case of its letters.
std::optional<std::size_t> columnOf(const formats::CsvRow& header, std::initializer_list<const char*> names);

} // namespace duskrow::tool
