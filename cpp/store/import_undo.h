// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "store/import_ledger.h"

namespace duskrow::store {

enum class StayReason {
    Changed, // somebody has changed it since
    InUse, // something that stays belongs to it
};

struct StayingRecord {
    std::string kind;
    domain::Uuid record;
    StayReason reason = StayReason::Changed;
};

struct ImportUndo {
    std::vector<domain::Edit> edits; // withdrawals
    std::map<std::string, std::size_t> withdrawn; // by kind
    std::vector<StayingRecord> staying;
};

// What undoing an import takes back: each record that it made, that stands, and that nobody has changed
// since. What others have added to stays, and is named. Reads the log: not for the thread of the screens.
//
// Errors  NothingToUndo {file} when this device knows no such import; as in queries.h
domain::Result<ImportUndo> planUndo(Reader& reader, const ImportNoted& import);

// Takes it back, with the reason, some thousand changes in each commit.
domain::Result<ImportRun> runUndo(Store& store, const ImportUndo& undo, const ImportNoted& import,
    const ImportBy& by, const Progress& progress);

} // namespace duskrow::store
