// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <string_view>

namespace duskrow::text {

// The name of a field as a person reads it in a sentence: "entrance_mm" is "the height of the entrance".
// A name without words comes back as it is.
QString fieldName(std::string_view field);

// The same where a kind calls something else by that name: "pest" of a trap is "the pest".
QString fieldName(std::string_view kind, std::string_view field);

// The name of a kind of record, or of a thing named on the command line: "protocol_use" is "pest in use".
QString kindName(std::string_view kind);

// A bound of a field in the unit people read: "10000" of "entrance_mm" is "1,000 cm".
QString boundName(std::string_view field, std::string_view bound);

} // namespace duskrow::text
