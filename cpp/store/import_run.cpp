// SPDX-License-Identifier: MIT
#include "store/import_run.h"

#include <algorithm>
#include <future>

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

// The first commits are short, so that something is seen soon and a stop comes soon on a slow device; the
// longer ones that follow write the pages of the indexes less often.
constexpr std::size_t firstCommit = 2'500;
constexpr std::size_t longestCommit = 20'000;

std::future<Result<Kept>> keep(Store& store, Batch batch)
{
    const auto promise = std::make_shared<std::promise<Result<Kept>>>();
    store.keep(std::move(batch), [promise](Result<Kept> kept) { promise->set_value(std::move(kept)); });
    return promise->get_future();
}

} // namespace

Result<ImportRun> runImport(Store& store, const ImportPlan& plan, const ImportNoted& import,
    const ImportBy& by, const Progress& progress)
{
    ImportRun run;
    const std::size_t all = plan.size();
    if (all == 0) return run;
    if (const auto noted = noteImportNow(store, import); !noted) return noted.error();
    const auto batchOf = [&](std::size_t from, std::size_t to) {
        Batch batch{by.author, by.at, by.offset, {}, {}, import.id};
        batch.edits.reserve(to - from);
        for (std::size_t at = from; at < to; ++at) batch.edits.push_back(plan.edit(at));
        return batch;
    };
    std::size_t size = firstCommit;
    std::size_t end = std::min(size, all);
    Batch batch = batchOf(0, end);
    while (true) {
        auto underWay = keep(store, std::move(batch));
        // While this one is written, the next is made ready; it is handed over only when nobody said stop.
        size = std::min(2 * size, longestCommit);
        const std::size_t next = std::min(end + size, all);
        batch = batchOf(end, next);
        if (const auto kept = underWay.get(); !kept) return kept.error();
        run.kept = end;
        const bool goesOn =
            !progress || progress(static_cast<std::int64_t>(end), static_cast<std::int64_t>(all));
        run.isStopped = !goesOn && end < all;
        if (!goesOn || end == all) return run;
        end = next;
    }
}

} // namespace duskrow::store
