// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

#include "domain/import/table_form.h"

namespace duskrow::formats {

using domain::DelimiterFinding;
using domain::DelimiterReason;

// What parts the cells of a table: comma, semicolon, tab or bar; whichever parts most lines as it parts the
// first, and of several the one that makes more columns. Signs within quotes do not count.
//
// text  UTF-8; its first lines are looked at
DelimiterFinding delimiterOf(std::string_view text);

// "comma", "semicolon", "tab", "bar"
std::string_view delimiterCode(char delimiter);
std::optional<char> delimiterNamed(std::string_view code);

} // namespace duskrow::formats
