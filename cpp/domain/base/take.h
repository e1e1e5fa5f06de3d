// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/base/result.h"

namespace duskrow::domain {

// Moves what was found to where it is wanted; what went wrong instead.
template <typename T>
std::optional<Error> take(Result<T> found, T& into)
{
    if (!found) return found.error();
    into = std::move(*found);
    return std::nullopt;
}

} // namespace duskrow::domain
