// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>

#include "domain/records/value.h"

namespace duskrow::domain {

// A value as JSON and back. What is neither empty, flag, whole number nor text becomes RawJson.
nlohmann::json jsonOf(const Value& value);
Value valueOf(const nlohmann::json& held);

// Canonical JSON text: keys sorted, no spaces. Bytes that are no UTF-8 are replaced: writing never fails.
std::string canonicalText(const nlohmann::json& held);

} // namespace duskrow::domain
