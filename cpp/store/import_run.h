// SPDX-License-Identifier: MIT
#pragma once

#include "domain/import/import_plan.h"
#include "store/import_ledger.h"

namespace duskrow::store {

// Who takes an import in, or undoes it, and when.
struct ImportBy {
    domain::Uuid author;
    domain::Instant at;
    std::chrono::minutes offset{0};
};

struct ImportRun {
    std::size_t kept = 0; // changes
    bool isStopped = false; // by `progress`; the same import again adds what is missing
};

// Keeps everything a plan makes, some thousand changes in each commit. Waits for the writer: not for the
// thread of the screens. What was kept before an error stays, and the same import again adds the rest.
//
// progress  told after each commit; false stops there
// Errors    those of Store::keepNow
domain::Result<ImportRun> runImport(Store& store, const domain::ImportPlan& plan, const ImportNoted& import,
    const ImportBy& by, const Progress& progress);

} // namespace duskrow::store
