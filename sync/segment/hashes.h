// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "sync/segment/segment.h"

// The hashes of FORMAT.md section 3.
namespace duskrow::sync {

// line  without its line feed
Hash leafHash(std::string_view line);

Hash rootHash(std::span<const Hash> leaves);

Hash segmentId(std::string_view headerBytes);

// What a signature is made over.
std::string signedText(std::string_view headerBytes);

} // namespace duskrow::sync
