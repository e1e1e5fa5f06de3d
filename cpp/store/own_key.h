// SPDX-License-Identifier: MIT
#pragma once

#include <SQLiteCpp/Database.h>

#include "store/stream_key.h"

namespace duskrow::store {

struct OwnKey {
    StreamKey key;
    bool isNew = false;
    std::optional<StreamKey> before; // that it goes on from
};

// The key this installation writes with: the one it has, or a new one when the store was copied, put back
// from a backup, or has met its double.
//
// Errors  those of loadKey and makeKey; those of the database
domain::Result<OwnKey> ownKey(SQLite::Database& database, const std::string& path, const std::string& folder,
    const domain::Uuid& programme);

} // namespace duskrow::store
