// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace duskrow::formats {

constexpr char32_t replacementCharacter = 0xFFFD;

// Takes the first character off a text. Bytes that are no UTF-8 (RFC 3629: overlong forms, surrogates and
// beyond U+10FFFF included) come out as the replacement character, one for each byte.
//
// rest  not empty; shorter afterwards
char32_t takeCodePoint(std::string_view& rest);

void appendUtf8(std::string& text, char32_t point);

// The same text with every byte that is no UTF-8 replaced.
std::string validUtf8(std::string_view text);

} // namespace duskrow::formats
