// SPDX-License-Identifier: MIT
#pragma once

#include "store/folding.h"

namespace duskrow::store {

// Who made the programme. Of a store that never met others it is whoever wrote in it; a stream that begins
// while one is still alone joins them, because nobody else could let it in, until it gives way.
//
// joined  the founders of a programme that is joined, when the store is made; empty for one's own
// Errors  those of writing
domain::Result<domain::Done> settleFounders(SQLite::Database& database, const std::string& path,
    const std::set<domain::StreamId>& joined, const domain::StreamId& own, Folding& folding);

// Streams that joined the founders later are none any more when others turn out to have come in by the word
// of those before: these know nothing of them. To be called within a transaction.
void giveWay(
    SQLite::Database& database, const domain::Uuid& programme, std::span<const domain::Change> rosterChanges);

} // namespace duskrow::store
