// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "formats/csv.h"
#include "formats/formats.h"

namespace duskrow::formats {

// The files of a Darwin Core archive of events and their occurrences: event.csv, occurrence.csv, meta.xml
// that says which column is which term, and eml.xml as handed in. The columns are named after their terms;
// the first of both tables is the event's id.
//
// Errors  those of writeCsv
// Source  TDWG Darwin Core terms; Darwin Core text guide, from memory
domain::Result<std::vector<ExportedFile>> darwinFiles(
    const Table& events, const Table& occurrences, std::string eml);

// "<name>text</name>", escaped.
std::string emlElement(const char* name, const std::string& text);

} // namespace duskrow::formats
