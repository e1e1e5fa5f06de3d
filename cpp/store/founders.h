// SPDX-License-Identifier: MIT
#pragma once

#include "store/folding.h"

namespace duskrow::store {

// Who made the programme. Of a store that never met others it is whoever wrote in it; a stream that begins
// while one is still alone joins them, because nobody else could let it in.
//
// joined  the founders of a programme that is joined, when the store is made; empty for one's own
// Errors  those of writing
domain::Result<domain::Done> settleFounders(SQLite::Database& database, const std::string& path,
    const std::set<domain::StreamId>& joined, const domain::StreamId& own, Folding& folding);

} // namespace duskrow::store
