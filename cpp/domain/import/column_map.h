// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/base/result.h"
#include "domain/import/import_field.h"

namespace duskrow::domain {

enum class ColumnReason {
    Heading, // it means this field
    Unknown, // the heading means nothing known: ignored
    Doubtful, // another column means the same field: ignored until somebody says which
    Chosen,
    DayHeading, // counts of the day that is its heading
};

struct MappedColumn {
    std::string heading;
    ImportField field = ImportField::Ignored;
    ColumnReason reason = ColumnReason::Unknown;
    ImportField meant = ImportField::Ignored; // of a doubtful one
    std::optional<HeightUnit> unit = {};
};

using ColumnMap = std::vector<MappedColumn>;

// "Trap height=entrance:cm": heading or number (from 1) of a column, field, and the unit of a height.
struct ColumnChoice {
    std::string column;
    std::string field;
};

// What each column holds: by its heading, English or French, with the unit in brackets or behind; what is
// chosen by hand goes before. Nothing else is looked at.
//
// Errors  ColumnMissing {column}; UnknownCode {"column", field, those there are}; ColumnTwice {field} of two
//         choices
Result<ColumnMap> columnMap(const std::vector<std::string>& header, const std::vector<ColumnChoice>& choices);

// Whether a table so mapped can say anything: a site, and days and counts in columns of their own or of a
// day each.
//
// Errors  ColumnTwice {field} where two columns may be it; ColumnMissing {code of the field}
Result<Done> checkNeeded(const ColumnMap& map);

std::optional<std::size_t> columnOf(const ColumnMap& map, ImportField field);

} // namespace duskrow::domain
