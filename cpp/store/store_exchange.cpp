// SPDX-License-Identifier: MIT
// What the exchange asks of the store.
#include <SQLiteCpp/Transaction.h>
#include <filesystem>

#include "store/durable_file.h"
#include "store/sqlite_error.h"
#include "store/store.h"

namespace duskrow::store {

using namespace duskrow::domain;

std::future<Result<Taken>> Store::take(IncomingSegment segment)
{
    struct Job {
        IncomingSegment segment;
        std::promise<Result<Taken>> promise;
    };
    const auto asked = std::make_shared<Job>(Job{std::move(segment), {}});
    auto answer = asked->promise.get_future();
    post([this, asked] {
        const bool isOwn = asked->segment.row.stream == m_key.stream;
        auto taken = m_shelf->take(std::move(asked->segment));
        // What comes under the own stream's numbers takes them.
        if (isOwn) m_writer->lookAgain();
        asked->promise.set_value(std::move(taken));
    });
    return answer;
}

Result<Roster> Store::rosterNow()
{
    return wait<Roster>([&] {
        return guarded<Roster>(m_path, [&] {
            // One for all that is read: else each of its records, and every site is one, takes the locks
            // anew.
            const SQLite::Transaction reading(*m_database);
            return m_folding->roster();
        });
    });
}

Result<Done> Store::sealNow(const SegmentRow& segment)
{
    const auto sealed = wait<Done>([&]() -> Result<Done> {
        if (segment.stream == m_key.stream)
            if (const auto noted = noteHandingOver(m_keyFolder, m_programme, m_key, segment.last); !noted)
                return noted.error();
        return m_shelf->seal(segment);
    });
    // Nobody waits for this, and where it fails the empty pages are given back another time.
    if (sealed) post([this] { static_cast<void>(m_shelf->giveBackPages().has_value()); });
    return sealed;
}

std::future<Result<SealedAs>> Store::keepSealed(std::shared_ptr<SealedBatch> batch)
{
    const auto promise = std::make_shared<std::promise<Result<SealedAs>>>();
    auto answer = promise->get_future();
    post([this, promise, batch = std::move(batch)] {
        auto kept = m_shelf->keep(*batch);
        m_writer->lookAgain();
        // Not before: a commit that fails would leave numbers noted that were never written.
        const auto noted = kept && *kept == SealedAs::Kept ? noteSealed() : Result<Done>(Done{});
        promise->set_value(noted ? std::move(kept) : Result<SealedAs>(noted.error()));
    });
    return answer;
}

Result<Done> Store::noteSealed()
{
    const auto last = m_shelf->lastOf(m_key.stream);
    return last ? noteHandingOver(m_keyFolder, m_programme, m_key, *last) : last.error();
}

Result<Done> Store::noteSealedNow()
{
    return wait<Done>([&] { return noteSealed(); });
}

Result<Done> Store::markPassedOnNow(const std::string& route, const std::vector<SegmentId>& ids, Instant at)
{
    return wait<Done>([&] { return m_shelf->markPassedOn(route, ids, at); });
}

Result<Done> Store::forgetPassedOnNow(const std::string& route)
{
    return wait<Done>([&] { return m_shelf->forgetPassedOn(route); });
}

Result<Done> Store::keepAsideNow(const AsideRow& row, std::string_view bytes)
{
    const auto file = std::filesystem::path(m_path + ".d") / "aside" / formatHex(row.hash);
    if (const auto written = writeDurably(file, bytes, Access::Everyone); !written) return written.error();
    return wait<Done>([&] { return m_shelf->keepAside(row); });
}

} // namespace duskrow::store
