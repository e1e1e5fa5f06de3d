// SPDX-License-Identifier: MIT
#pragma once

#include "domain/import/import_plan.h"
#include "store/import_ledger.h"

namespace duskrow::sync {

// Keeps everything a plan makes, some thousand changes in each commit. A long import goes straight into
// segments: as a tail it would be sealed at once anyway, and every change be written twice. Waits for the
// writer: not for the thread of the screens. What was kept before an error stays, and the same import again
// adds the rest; so it does after a stop.
//
// progress  told after each commit; false stops there
// Errors    those of Store::keepNow and of sealing
domain::Result<store::ImportRun> runImport(store::Store& store, const domain::ImportPlan& plan,
    const store::ImportNoted& import, const store::ImportBy& by, const store::Progress& progress);

} // namespace duskrow::sync
