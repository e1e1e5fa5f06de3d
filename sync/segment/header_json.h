// SPDX-License-Identifier: MIT
#pragma once

#include "sync/segment/segment.h"

namespace duskrow::sync {

inline constexpr std::size_t mostHeaderBytes = 16'384;

// So many other streams a segment cites at most: with them the header stays within its bytes.
inline constexpr std::size_t mostCites = 256;

// Canonical JSON of a header.
std::string headerText(const SegmentHeader& header);

// Keys of a newer version are passed over; the bytes are kept and passed on as they came.
//
// Errors  SegmentMalformed {what}; SegmentTooLarge {what}
domain::Result<SegmentHeader> readHeader(std::string_view text);

} // namespace duskrow::sync
