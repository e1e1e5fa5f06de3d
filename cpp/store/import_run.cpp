// SPDX-License-Identifier: MIT
#include "store/import_run.h"

#include <algorithm>

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

constexpr std::size_t inOneCommit = 2'500; // short enough to stop soon, long enough not to wait for the disk

} // namespace

Result<ImportRun> runImport(Store& store, const ImportPlan& plan, const ImportNoted& import,
    const ImportBy& by, const Progress& progress)
{
    ImportRun run;
    if (plan.size() == 0) return run;
    if (const auto noted = noteImportNow(store, import); !noted) return noted.error();
    while (run.kept < plan.size()) {
        const std::size_t end = std::min(run.kept + inOneCommit, plan.size());
        Batch batch{by.author, by.at, by.offset, {}, {}, import.id};
        batch.edits.reserve(end - run.kept);
        for (std::size_t at = run.kept; at < end; ++at) batch.edits.push_back(plan.edit(at));
        if (const auto kept = store.keepNow(std::move(batch)); !kept) return kept.error();
        run.kept = end;
        if (progress && !progress(static_cast<std::int64_t>(end), static_cast<std::int64_t>(plan.size()))) {
            run.isStopped = end < plan.size();
            break;
        }
    }
    return run;
}

} // namespace duskrow::store
