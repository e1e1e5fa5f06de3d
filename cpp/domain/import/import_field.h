// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace duskrow::domain {

// What a column of a table of counts may hold.
enum class ImportField {
    Ignored, // kept out, and said so
    Year,
    District,
    Site,
    FieldName, // as people there call the field
    Crop,
    Trap, // its tag
    Latitude,
    Longitude,
    SetDay,
    FromDay, // on which the period of the count began
    Day, // on which was counted
    PeriodNights,
    Count,
    NotIt,
    BumbleBees,
    Entrance, // a height, in the column's unit
    Canopy, // the same
    Emptied, // yes or no
    Observer,
    Remark,
};

struct ImportFieldRow {
    ImportField field;
    std::string_view code; // on the command line, and the name of the field where a record has one
    std::span<const std::string_view> headings; // that mean it, as plainHeading gives them
};

// Every field but Ignored, in the order in which they are shown.
std::span<const ImportFieldRow> importFields();
const ImportFieldRow& rowOf(ImportField field);
std::optional<ImportField> importFieldNamed(std::string_view code); // "ignore" among them

// Units of heights: "mm", "cm", "m", "in", "ft".
enum class HeightUnit { Millimetre, Centimetre, Metre, Inch, Foot };
std::optional<HeightUnit> heightUnitNamed(std::string_view code);
std::string_view codeOf(HeightUnit unit);
double millimetresIn(HeightUnit unit);

} // namespace duskrow::domain
