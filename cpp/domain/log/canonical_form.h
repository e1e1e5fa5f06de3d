// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace duskrow::domain {

// Whether JSON is written in the canonical form: no spaces, keys in ascending order of bytes, nothing escaped
// that need not be. A pass over the bytes, several times quicker than writing the value again.
//
// text  was read by parseBounded with whole numbers only: well-formed, and no deeper than 16
bool isCanonicalForm(std::string_view text);

} // namespace duskrow::domain
