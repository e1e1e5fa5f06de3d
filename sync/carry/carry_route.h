// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>

#include "store/store.h"
#include "sync/carry/carried_reader.h"
#include "sync/exchange/report.h"

namespace duskrow::sync {

// What goes into a carried file.
struct CarryWhat {
    // Only what a device of this member is not known to have, by what he cites and has handed over; nil:
    // everything.
    domain::Uuid forMember;
};

// Writes what this store may pass on: every whole segment, and photographs.
//
// Errors  DiskFull, FileUnwritable {path}; those of the own store
domain::Result<ExchangeReport> writeCarried(store::Store& store, const std::filesystem::path& path,
    const CarryWhat& what, domain::Instant now, const Journey& journey = {});

// What a carried file would bring, looked at without taking anything in.
struct CarriedPreview {
    domain::Uuid programme; // nil when no whole segment tells
    Ending ending = Ending::Whole;
    std::int64_t changes = 0;
    std::int64_t newChanges = 0;
    std::int64_t photographs = 0;
    std::int64_t refused = 0;
    std::map<domain::StreamId, std::int64_t> newFrom; // changes that are new, by the stream that wrote them
};

// Errors  FileUnreadable, CarriedNotOurs {path}; those of the own store
domain::Result<CarriedPreview> previewCarried(store::Store& store, const std::filesystem::path& path);

// Takes in every whole segment of a carried file.
//
// Errors  FileUnreadable, CarriedNotOurs {path}; those of the own store
domain::Result<ExchangeReport> readCarried(
    store::Store& store, const std::filesystem::path& path, domain::Instant now, const Journey& journey = {});

} // namespace duskrow::sync
