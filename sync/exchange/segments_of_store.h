// SPDX-License-Identifier: MIT
#pragma once

#include "store/store.h"
#include "sync/segment/segment.h"

// Between the store's rows and the bytes that travel; common to all routes.
namespace duskrow::sync {

// Seals what was written on this device since the last time. Returns the number of segments made.
//
// Errors  those of the store and of sealing
domain::Result<std::int64_t> sealTail(store::Store& store, store::Reader& reader);

// So many changes are sealed before anybody asks for them: a signal may last for a minute only, and by then
// little is left to pack.
inline constexpr std::int64_t fullTail = 1000;
domain::Result<bool> isTailFull(const store::Store& store, store::Reader& reader);
// Seals when the tail is full. Returns the number of segments made.
domain::Result<std::int64_t> sealFullTail(store::Store& store, store::Reader& reader);

store::SegmentRow rowOf(const SegmentHead& head);

// The bytes of a segment that the store holds; nothing when it is not there any more.
domain::Result<std::optional<std::string>> bytesOf(store::Reader& reader, const store::SegmentId& id);

} // namespace duskrow::sync
