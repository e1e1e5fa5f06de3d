// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>

#include "tool/trap_results.h"

namespace duskrow::tool {

// What the rules of the protocol, other than its bands, say of a trap's season so far: one object a rule.
nlohmann::ordered_json rulesJson(const TrapResult& result);

} // namespace duskrow::tool
