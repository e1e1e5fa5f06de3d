// SPDX-License-Identifier: MIT
#pragma once

#include "store/store.h"

namespace duskrow::store {

// Who takes an import in, or undoes it, and when.
struct ImportBy {
    domain::Uuid author;
    domain::Instant at;
    std::chrono::minutes offset{0};
};

struct ImportRun {
    std::size_t kept = 0; // changes
    bool isStopped = false; // by the one who was told of the progress
};

// What this device notes about imports, so that one can be undone: which numbers of its own stream an import
// wrote. It is no part of the log; the changes are.

// An import is known by its file: the same file again, after a cut as well, is the same import.
domain::Uuid importId(const domain::Uuid& programme, const std::string& fileHash);

std::string importRangeKey(const std::string& import, const domain::StreamId& stream, std::int64_t first);

struct ImportNoted {
    std::string id; // as text
    std::string file; // its name, without the folders
};
domain::Result<domain::Done> noteImportNow(Store& store, const ImportNoted& import);
domain::Result<std::vector<ImportNoted>> importsNoted(Reader& reader);

struct ImportRange {
    domain::StreamId stream;
    std::int64_t first = 0;
    std::int64_t last = 0;
};
// What an import wrote, its undoing among it, in the order of streams and numbers.
domain::Result<std::vector<ImportRange>> rangesOfImport(Reader& reader, const std::string& import);

} // namespace duskrow::store
