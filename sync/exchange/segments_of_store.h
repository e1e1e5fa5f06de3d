// SPDX-License-Identifier: MIT
#pragma once

#include "store/store.h"
#include "sync/exchange/report.h"
#include "sync/segment/segment.h"

// Between the store's rows and the bytes that travel; common to all routes.
namespace duskrow::sync {

// Seals what was written on this device since the last time. Returns the number of segments made.
//
// Errors  those of the store and of sealing
domain::Result<std::int64_t> sealTail(store::Store& store, store::Reader& reader);

// Takes in the bytes of a segment that came from anywhere. What is refused is kept aside with its reason and
// counted; only a failure of this device's own store is an error.
domain::Result<store::TakenAs> takeIn(store::Store& store, std::string_view bytes, const std::string& origin,
    domain::Instant now, ExchangeReport& report);

// The bytes of a segment that the store holds; nothing when it is not there any more.
domain::Result<std::optional<std::string>> bytesOf(store::Reader& reader, const store::SegmentId& id);

// A refused item, put beside the store.
domain::Result<domain::Done> refuse(store::Store& store, std::string_view bytes, const std::string& origin,
    const domain::Error& reason, domain::Instant now, ExchangeReport& report);

} // namespace duskrow::sync
