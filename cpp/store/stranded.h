// SPDX-License-Identifier: MIT
#pragma once

#include "store/current_tables.h"

namespace duskrow::store {

// Changes of earlier streams that stand in no segment and whose key is gone: nobody could sign them any more,
// so they would never leave this device. Writes them again as changes of the stream that goes on, in one
// transaction with a note that the tables must be made anew.
//
// keys    streams that can still sign for themselves
// Errors  those of writing
domain::Result<domain::Done> adoptStranded(SQLite::Database& database, const std::string& path,
    const domain::StreamId& own, const std::set<domain::StreamId>& keys);

} // namespace duskrow::store
