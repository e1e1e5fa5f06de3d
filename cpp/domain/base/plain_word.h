// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace duskrow::domain {

// A name as two people may have typed it differently: small letters without accents (of Latin-1), runs of
// blanks as one, none at the ends.
std::string plainWord(std::string_view name);

// The same for the heading of a column: whatever is neither letter nor digit counts as a blank.
std::string plainHeading(std::string_view heading);

std::string_view withoutBlanks(std::string_view text); // at either end

// Whether a text holds only what a person can have meant to write: no control characters (line breaks and
// tabs aside), no signs that turn the direction of a line, and nothing that could not be read.
bool isPlainText(std::string_view text);

} // namespace duskrow::domain
