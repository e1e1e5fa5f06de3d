// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <variant>

namespace duskrow::domain {

// JSON of a form this version does not know: canonical text, so that it is passed on byte for byte.
struct RawJson {
    std::string text;
    auto operator<=>(const RawJson&) const = default;
};

// The value of one field as it stands in a change: nothing, a flag, a whole number in the field's small unit,
// or text (ids, days and decimals are text too). There are no floats in the log.
using Value = std::variant<std::monostate, bool, std::int64_t, std::string, RawJson>;

inline bool isEmpty(const Value& value)
{
    return std::holds_alternative<std::monostate>(value);
}

} // namespace duskrow::domain
