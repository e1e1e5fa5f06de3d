// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "domain/base/result.h"

// The payload of a segment: its lines, turned (turned_lines.h) and packed as one frame of zstd
// (RFC 8878).
namespace duskrow::domain {

// Bytes added to the lines for each change that a partial form may leave out: '-', 64 digits, a line feed.
inline constexpr std::int64_t leftOutBytes = 66;

// Turned lines leave little for more work to find.
inline constexpr int packingLevel = 3;

// level  of zstd, 1 to 19
std::string pack(std::string_view lines, int level = packingLevel);

// Unpacks no more than `most` bytes, and spends no more memory than twice these and a fixed workspace.
//
// Errors  SegmentMalformed {"payload"} when it is not exactly one frame that names its size, needs a
//         dictionary, has a window above 8 MiB, or is damaged; SegmentTooLarge {"payload"} when it says that
//         it unpacks to more than `most`
Result<std::string> unpack(std::string_view packed, std::size_t most);

} // namespace duskrow::domain
