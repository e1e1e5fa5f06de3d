// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace duskrow::domain {

// Whether bytes are text that every program can read: UTF-8 (RFC 3629: no surrogates, no overlong forms,
// nothing above U+10FFFF) without the NUL character.
bool isReadableText(std::string_view bytes);

} // namespace duskrow::domain
