// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "domain/import/table_form.h"

namespace duskrow::formats {

using domain::Encoding;
using domain::EncodingFinding;
using domain::EncodingReason;

// A file that ends within a letter is cut, and still UTF-8.
//
// Source  RFC 3629 (UTF-8), RFC 2781 (UTF-16 and its mark)
EncodingFinding encodingOf(std::string_view bytes);

// The text without its byte order mark. What has no meaning in the encoding becomes U+FFFD.
//
// Source  Windows-1252: the table of the WHATWG Encoding Standard, its five unassigned bytes left without
//         meaning (from memory)
std::string toUtf8(std::string_view bytes, Encoding encoding);

// "utf-8", "utf-16le", "utf-16be", "windows-1252"
std::string_view codeOf(Encoding encoding);
std::optional<Encoding> encodingNamed(std::string_view code);

} // namespace duskrow::formats
