// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/result.h"

// The payload: one frame of zstd (RFC 8878).
namespace duskrow::sync {

// Bytes added to `raw` for each change that a partial form may leave out: '-', 64 digits, a line feed.
inline constexpr std::int64_t leftOutBytes = 66;

// level  of zstd, 1 to 19
std::string pack(std::string_view raw, int level);

// Unpacks no more than `most` bytes, and spends no more memory than these and a fixed workspace.
//
// Errors  SegmentMalformed {"payload"} when it is not exactly one frame that names its size, needs a
//         dictionary, has a window above 8 MiB, or is damaged; SegmentTooLarge {"payload"} when it says that
//         it unpacks to more than `most`
domain::Result<std::string> unpack(std::string_view packed, std::size_t most);

} // namespace duskrow::sync
