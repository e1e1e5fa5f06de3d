// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "domain/base/result.h"

namespace duskrow::sync {

// Why something was kept aside, as the store keeps it over versions: a word, then what fills its sentence,
// each behind a line feed. Numbers of error codes would mean something else in the next version.
std::string refusalText(const domain::Error& reason);

// The error that such a text stands for; nothing when the word is not known here.
std::optional<domain::Error> refusalIn(std::string_view text);

} // namespace duskrow::sync
