// SPDX-License-Identifier: MIT
#include "sync/exchange/import_run.h"

#include <algorithm>

#include "sync/exchange/segments_of_store.h"

namespace duskrow::sync {

using namespace duskrow::domain;
using namespace duskrow::store;

namespace {

// The first commits are short, so that something is seen soon and a stop comes soon on a slow device; the
// longer ones that follow write the pages of the indexes less often.
constexpr std::size_t firstCommit = 2'500;
constexpr std::size_t longestCommit = 20'000;

// Where the own stream ends, with nothing of it outside of segments.
struct End {
    std::int64_t last = 0;
    Hash id{};
};

class Importing {
public:
    Importing(Store& store, const ImportPlan& plan, const ImportNoted& import, const ImportBy& by)
        : m_store(store), m_plan(plan), m_import(import), m_by(by)
    {
    }

    Result<ImportRun> run(const Progress& progress)
    {
        ImportRun run;
        const std::size_t all = m_plan.size();
        std::size_t size = firstCommit;
        std::size_t end = std::min(size, all);
        auto ready = sealed(0, end);
        while (true) {
            if (!ready) return ready.error();
            const std::size_t from = run.kept;
            size = std::min(2 * size, longestCommit);
            const std::size_t next = std::min(end + size, all);
            bool isKept = false;
            // Given back here, where it was made: the writer has other things to do.
            if (const auto batch = *ready) {
                auto underWay = m_store.keepSealed(batch);
                // While this one is written, the next is made ready; it is handed over only when nobody said
                // stop.
                ready = sealed(end, next);
                const auto as = underWay.get();
                if (!as) return as.error();
                isKept = *as == SealedAs::Kept;
            }
            if (!isKept) {
                if (const auto kept = m_store.keepNow(batchOf(from, end)); !kept) return kept.error();
                m_end.reset();
                ready = sealed(end, next);
            }
            run.kept = end;
            const bool goesOn =
                !progress || progress(static_cast<std::int64_t>(end), static_cast<std::int64_t>(all));
            run.isStopped = !goesOn && end < all;
            if (!goesOn || end == all) return run;
            end = next;
        }
    }

private:
    [[nodiscard]] Batch batchOf(std::size_t from, std::size_t to) const
    {
        Batch batch{m_by.author, m_by.at, m_by.offset, {}, {}, m_import.id};
        batch.edits.reserve(to - from);
        for (std::size_t at = from; at < to; ++at) batch.edits.push_back(m_plan.edit(at));
        return batch;
    }

    // The change of an edit that makes a record; nothing where it is none, or may not be kept: keep() knows
    // what to do with it, or says why not.
    std::optional<Change> changeOf(Edit edit, std::int64_t seq) const
    {
        if (edit.fields.empty() || edit.fields.contains("withdrawn") || !checkEdit(edit)) return std::nullopt;
        Change change{.programme = m_store.programme(),
            .ref = {m_store.stream(), seq},
            .author = m_by.author,
            .kind = std::move(edit.kind),
            .record = edit.record,
            .site = edit.site,
            .at = m_by.at,
            .offset = m_by.offset,
            .fields = {},
            .saw = {}};
        change.fields.reserve(edit.fields.size());
        for (auto& [field, value] : edit.fields)
            change.fields.emplace_hint(change.fields.end(), field, FieldSet{std::move(value), {}});
        return change;
    }

    // These edits as segments that go on from where the stream ends; nothing where they are too few for that,
    // or not all of them make new records.
    Result<std::shared_ptr<SealedBatch>> sealed(std::size_t from, std::size_t to)
    {
        const std::shared_ptr<SealedBatch> nothing;
        if (from == to || m_plan.size() < static_cast<std::size_t>(fullTail)) return nothing;
        // Where the first makes nothing new, nor do those behind it, most often: nothing is sealed for them.
        if (!changeOf(m_plan.edit(from), 1)) return nothing;
        if (!m_end)
            if (const auto found = findEnd(); !found) return found.error();
        const auto batch = std::make_shared<SealedBatch>();
        batch->import = m_import.id;
        batch->parts.reserve((to - from) / static_cast<std::size_t>(mostChanges) + 1);
        End end = *m_end;
        while (from < to) {
            const std::size_t until = std::min(to, from + static_cast<std::size_t>(mostChanges));
            std::vector<Change> changes;
            changes.reserve(until - from);
            m_text.clear();
            std::vector<std::size_t> ends;
            for (std::size_t at = from; at < until; ++at) {
                auto change =
                    changeOf(m_plan.edit(at), end.last + 1 + static_cast<std::int64_t>(changes.size()));
                if (!change) return nothing;
                appendCanonicalJson(m_text, *change);
                if (m_text.size() - (ends.empty() ? 0 : ends.back()) > mostChangeBytes) return nothing;
                ends.push_back(m_text.size());
                changes.push_back(std::move(*change));
            }
            auto part = sealPart(std::move(changes), ends, end);
            if (!part) return part.error();
            from += part->changes.size();
            batch->parts.push_back(std::move(*part));
        }
        m_end = end;
        return batch;
    }

    Result<SealedBatch::Part> sealPart(
        std::vector<Change> changes, const std::vector<std::size_t>& ends, End& end)
    {
        std::vector<std::string_view> lines;
        lines.reserve(ends.size());
        std::size_t from = 0;
        for (const std::size_t to : ends) {
            lines.push_back(std::string_view(m_text).substr(from, to - from));
            from = to;
        }
        const Sealing how{.programme = m_store.programme(),
            .stream = m_store.stream(),
            .key = m_store.publicKey(),
            .previous = end.id,
            .roster = m_rosterChanges};
        const auto head =
            seal(how, changes, lines, [&](std::string_view message) { return m_store.sign(message); });
        if (!head) return head.error();
        changes.erase(changes.begin() + (head->header.last - head->header.first + 1), changes.end());
        end = {head->header.last, head->id};
        return SealedBatch::Part{rowOf(*head), std::move(changes)};
    }

    // Seals what was written before, for the import to go on from there.
    Result<Done> findEnd()
    {
        const auto reader = m_store.reader();
        if (!reader) return reader.error();
        if (const auto sealedBefore = sealTail(m_store, **reader); !sealedBefore) return sealedBefore.error();
        const auto last = lastSegment(**reader, m_store.stream());
        if (!last) return last.error();
        m_end = *last ? End{(*last)->last, (*last)->id} : End{};
        const auto roster = m_store.rosterNow();
        if (!roster) return roster.error();
        m_rosterChanges = roster->changes();
        return Done{};
    }

    Store& m_store;
    const ImportPlan& m_plan;
    const ImportNoted& m_import;
    const ImportBy& m_by;
    std::optional<End> m_end; // as it will be when all that was made ready is kept
    std::int64_t m_rosterChanges = 0;
    std::string m_text; // of the changes that are sealed
};

} // namespace

Result<ImportRun> runImport(Store& store, const ImportPlan& plan, const ImportNoted& import,
    const ImportBy& by, const Progress& progress)
{
    if (plan.size() == 0) return ImportRun{};
    if (const auto noted = noteImportNow(store, import); !noted) return noted.error();
    return Importing(store, plan, import, by).run(progress);
}

} // namespace duskrow::sync
