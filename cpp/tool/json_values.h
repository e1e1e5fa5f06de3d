// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>
#include <optional>

#include "domain/base/time.h"

// What was not observed is null.
namespace duskrow::tool {

inline nlohmann::ordered_json orNull(const std::optional<domain::LocalDay>& day)
{
    return day ? nlohmann::ordered_json(domain::formatDay(*day)) : nlohmann::ordered_json();
}

template <typename Q>
nlohmann::ordered_json orNull(const std::optional<Q>& amount)
{
    return amount ? nlohmann::ordered_json(amount->value()) : nlohmann::ordered_json();
}

} // namespace duskrow::tool
