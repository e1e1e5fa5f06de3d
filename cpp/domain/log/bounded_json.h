// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string_view>

namespace duskrow::domain {

// Parses JSON that may come from anybody: nothing when it is malformed, repeats a key, or nests deeper than
// `depth`. The depth is refused by the tokenizer, before memory is spent on it.
std::optional<nlohmann::json> parseBounded(std::string_view text, int depth);

} // namespace duskrow::domain
