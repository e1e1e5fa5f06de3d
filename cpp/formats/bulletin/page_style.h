// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace duskrow::formats {

// The style sheet of the page: never anything that was handed in, so that its hash stands for it.
std::string pageStyle();

// The policy that lets exactly this style sheet in, and nothing else.
//
// Source  W3C, Content Security Policy Level 3, hash sources: base64 of SHA-256 of the element's text
std::string pagePolicy(const std::string& style);

} // namespace duskrow::formats
