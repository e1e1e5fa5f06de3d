// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>

#include "store/store.h"
#include "sync/exchange/report.h"

namespace duskrow::sync {

// One exchange through a shared folder: what is here and not there is handed over, what is there and not here
// is taken in.
//
// Errors  FolderMissing {path}; DiskFull, FileUnwritable {path} when nothing could be handed over; those of
// the own store.
//         Whatever came in before stays in.
domain::Result<ExchangeReport> exchangeByFolder(store::Store& store, const std::filesystem::path& shared,
    domain::Instant now, const Journey& journey = {});

// The route's name, as the store remembers what went that way.
std::string folderRoute(const std::filesystem::path& shared);

// The programmes that lie in a shared folder.
std::vector<domain::Uuid> programmesIn(const std::filesystem::path& shared);

} // namespace duskrow::sync
