// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <span>

#include "domain/log/change.h"

namespace duskrow::sync {

// Values of one object of JSON; nothing when the key is missing or holds something else.
std::optional<std::int64_t> wholeAt(const nlohmann::json& object, const char* key);
std::optional<domain::Uuid> uuidAt(const nlohmann::json& object, const char* key);
bool hexAt(const nlohmann::json& object, const char* key, std::span<std::uint8_t> out);

// Nothing when there is no such list, or something else than short readable names in it.
std::optional<std::vector<std::string>> namesAt(const nlohmann::json& object, const char* key);

// Numbers by stream, each at least 1; nothing when malformed, or when `own` is among them.
std::optional<std::map<domain::StreamId, std::int64_t>> citesAt(
    const nlohmann::json& object, const char* key, const domain::StreamId& own);

} // namespace duskrow::sync
