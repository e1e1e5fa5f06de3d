// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string_view>

namespace duskrow::domain {

enum class Numbers { WholeOnly, Any };

// Parses JSON that may come from anybody: nothing when it is malformed, repeats a key, holds a NUL or a whole
// number beyond 64 bits with sign, or nests deeper than `depth`. Reading stops at the first of these, before
// memory is spent on the rest.
std::optional<nlohmann::json> parseBounded(
    std::string_view text, std::size_t depth, Numbers numbers = Numbers::Any);

} // namespace duskrow::domain
