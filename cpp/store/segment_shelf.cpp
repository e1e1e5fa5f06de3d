// SPDX-License-Identifier: MIT
#include "store/segment_shelf.h"

#include <SQLiteCpp/Transaction.h>
#include <algorithm>

#include "domain/log/packing.h"
#include "store/import_ledger.h"
#include "store/setting.h"
#include "store/sqlite_error.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

// Changes are many and large: they leave the segment, never to be there twice.
std::vector<Change> takeChangesOf(IncomingSegment& segment)
{
    std::vector<Change> changes;
    changes.reserve(segment.lines.size());
    for (IncomingSegment::Line& line : segment.lines)
        if (line.change) changes.push_back(std::move(*line.change));
    return changes;
}

} // namespace

SegmentShelf::SegmentShelf(SQLite::Database& database, std::string path, Folding& folding)
    : m_database(database), m_path(std::move(path)), m_folding(folding), m_table(database),
      m_statements(database)
{
}

// Whether other content stands under one of its numbers.
bool SegmentShelf::isFork(const IncomingSegment& segment)
{
    const std::int64_t local = m_table.localOf(segment.row.stream);
    const auto differs = [&](std::int64_t seq, std::string_view body) {
        const auto at = static_cast<std::size_t>(seq - segment.row.first);
        const IncomingSegment::Line& line = segment.lines[at];
        return line.change && body.starts_with('{') && body != line.bytes;
    };
    std::vector<std::pair<std::int64_t, std::int64_t>> others; // id, first
    {
        Running query = m_statements.prepared(
            "SELECT id, first FROM segment WHERE stream=? AND first<=? AND last>=? AND hash<>?");
        query->bind(1, local);
        query->bind(2, segment.row.last);
        query->bind(3, segment.row.first);
        bindBytes(*query, 4, segment.row.id);
        while (query->executeStep())
            others.emplace_back(query->getColumn(0).getInt64(), query->getColumn(1).getInt64());
    }
    for (const auto& [id, first] : others) {
        const auto unpacked = m_folding.lines().segment(id);
        if (!unpacked) continue;
        for (std::size_t i = 0; i < unpacked->lines.size(); ++i) {
            const std::int64_t seq = first + static_cast<std::int64_t>(i);
            if (seq >= segment.row.first && seq <= segment.row.last && differs(seq, unpacked->lines[i]))
                return true;
        }
    }
    Running own =
        m_statements.prepared("SELECT seq, body FROM change WHERE stream=? AND seq BETWEEN ? AND ?");
    own->bind(1, local);
    own->bind(2, segment.row.first);
    own->bind(3, segment.row.last);
    while (own->executeStep())
        if (differs(own->getColumn(0).getInt64(), own->getColumn(1).getString())) return true;
    return false;
}

std::vector<Change> SegmentShelf::changesIn(std::int64_t id)
{
    std::vector<Change> changes;
    if (const auto unpacked = m_folding.lines().segment(id); unpacked && !unpacked->isUnread)
        for (const std::string_view line : unpacked->lines)
            if (auto change = readChange(line)) changes.push_back(std::move(*change));
    return changes;
}

// Uses a segment, and those that waited for it.
void SegmentShelf::use(std::int64_t id, const SegmentId& hash, std::vector<Change> changes, Taken& taken)
{
    const auto firstOf = [&](std::int64_t segment) {
        Running query = m_statements.prepared("SELECT first FROM segment WHERE id=?");
        query->bind(1, segment);
        query->executeStep();
        return query->getColumn(0).getInt64();
    };
    m_table.addLines(id, changes, firstOf(id));
    taken.changes += static_cast<std::int64_t>(changes.size());
    std::vector<Change> all = std::move(changes);
    std::vector<std::int64_t> used{id};
    std::vector<SegmentId> ready{hash};
    while (!ready.empty()) {
        const SegmentId before = ready.back();
        ready.pop_back();
        std::vector<std::pair<std::int64_t, SegmentId>> next;
        {
            Running query = m_statements.prepared(
                "SELECT id, hash FROM segment WHERE waits=1 AND previous=?1 AND first = 1 + (SELECT last "
                "FROM "
                "segment WHERE hash=?1) AND stream = (SELECT stream FROM segment WHERE hash=?1)");
            bindBytes(*query, 1, before);
            while (query->executeStep()) {
                SegmentId found{};
                std::copy_n(static_cast<const std::uint8_t*>(query->getColumn(1).getBlob()),
                    std::min<std::size_t>(
                        found.size(), static_cast<std::size_t>(query->getColumn(1).getBytes())),
                    found.begin());
                next.emplace_back(query->getColumn(0).getInt64(), found);
            }
        }
        for (const auto& [waiting, found] : next) {
            Running release = m_statements.prepared("UPDATE segment SET waits=0 WHERE id=?");
            release->bind(1, waiting);
            release->exec();
            std::vector<Change> more = changesIn(waiting);
            m_table.addLines(waiting, more, firstOf(waiting));
            taken.changes += static_cast<std::int64_t>(more.size());
            all.insert(all.end(), std::move_iterator(more.begin()), std::move_iterator(more.end()));
            used.push_back(waiting);
            ready.push_back(found);
        }
    }
    m_folding.take(all, used);
}

// Adds to a partial segment what this form shows of it.
void SegmentShelf::fill(const SegmentTable::Place& place, IncomingSegment& segment, Taken& taken)
{
    const auto held = m_folding.lines().segment(place.id);
    std::string text;
    std::vector<Change> added;
    bool isWhole = true;
    for (std::size_t i = 0; i < segment.lines.size(); ++i) {
        const bool isHeld = held && i < held->lines.size() && held->lines[i].starts_with('{');
        IncomingSegment::Line& line = segment.lines[i];
        isWhole = isWhole && (isHeld || line.change);
        if (!isHeld && line.change) added.push_back(std::move(*line.change));
        text += isHeld ? std::string(held->lines[i]) : line.bytes;
        text += '\n';
    }
    if (added.empty()) return;
    const std::string payload = isWhole && segment.row.isWhole ? segment.row.payload : pack(text);
    Running update =
        m_statements.prepared("UPDATE segment SET payload=?, whole=? WHERE id=? RETURNING waits");
    bindBytes(*update, 1, payload);
    update->bind(2, isWhole ? 1 : 0);
    update->bind(3, place.id);
    update->executeStep();
    const bool waits = update->getColumn(0).getInt() != 0;
    m_folding.lines().clear();
    taken.as = TakenAs::Fuller;
    if (waits) return;
    m_table.addLines(place.id, added, segment.row.first);
    taken.changes = static_cast<std::int64_t>(added.size());
    m_folding.take(added);
}

Result<Taken> SegmentShelf::take(IncomingSegment segment)
{
    auto result = guarded<Taken>(m_path, [&] {
        SQLite::Transaction transaction(m_database, SQLite::TransactionBehavior::IMMEDIATE);
        m_folding.roster(); // as it stands before this comes in, or nothing would seem to change
        Taken taken;
        const auto place = m_table.find(segment.row.id);
        if (place && place->isWhole) return taken;
        taken.isFork = isFork(segment);
        if (taken.isFork) {
            Running mark = m_statements.prepared("INSERT OR REPLACE INTO setting VALUES (?, '1')");
            mark->bind(1, "forked/" + formatHex(segment.row.stream));
            mark->exec();
        }
        if (place) {
            fill(*place, segment, taken);
            transaction.commit();
            return taken;
        }
        const bool waits = !m_table.hasPredecessor(segment.row);
        const std::int64_t id = m_table.insert(segment.row, waits);
        for (const auto& [stream, seq] : segment.cites) {
            Running cite = m_statements.prepared("INSERT INTO cited VALUES (?,?) ON CONFLICT (stream) DO "
                                                 "UPDATE SET seq=max(seq, excluded.seq)");
            bindBytes(*cite, 1, stream);
            cite->bind(2, seq);
            cite->exec();
        }
        taken.as = waits ? TakenAs::Waits : TakenAs::Used;
        if (!waits) use(id, segment.row.id, takeChangesOf(segment), taken);
        transaction.commit();
        return taken;
    });
    if (!result) m_folding.forget();
    return result;
}

bool SegmentShelf::isTailThere(const SegmentRow& row)
{
    Running query =
        m_statements.prepared("SELECT count(*) FROM change WHERE stream=? AND seq BETWEEN ? AND ?");
    query->bind(1, m_table.localOf(row.stream));
    query->bind(2, row.first);
    query->bind(3, row.last);
    query->executeStep();
    return query->getColumn(0).getInt64() == row.last - row.first + 1;
}

void SegmentShelf::dropTail(const SegmentRow& row)
{
    const std::int64_t local = m_table.localOf(row.stream);
    const auto bindRange = [&](SQLite::Statement& statement) {
        statement.bind(1, local);
        statement.bind(2, row.first);
        statement.bind(3, row.last);
    };
    Running others = m_statements.prepared(
        "SELECT EXISTS (SELECT 1 FROM change WHERE NOT (stream=? AND seq BETWEEN ? AND ?))");
    bindRange(*others);
    others->executeStep();
    // Emptying a table is one stroke; rows are taken out one by one, and out of the index.
    if (others->getColumn(0).getInt() == 0) {
        others->reset();
        Running empty = m_statements.prepared("DELETE FROM change");
        empty->exec();
        return;
    }
    Running drop = m_statements.prepared("DELETE FROM change WHERE stream=? AND seq BETWEEN ? AND ?");
    bindRange(*drop);
    drop->exec();
}

// The rows that a segment took the place of leave empty pages; a few are kept for the next ones.
Result<Done> SegmentShelf::giveBackPages()
{
    return guarded<Done>(m_path, [&] {
        constexpr std::int64_t mostFreePages = 128;
        if (m_database.execAndGet("PRAGMA freelist_count").getInt64() > mostFreePages)
            m_database.exec("PRAGMA incremental_vacuum");
        return Done{};
    });
}

Result<Done> SegmentShelf::seal(const SegmentRow& row)
{
    auto result = guarded<Done>(m_path, [&] {
        SQLite::Transaction transaction(m_database, SQLite::TransactionBehavior::IMMEDIATE);
        if (!isTailThere(row)) return Done{};
        const std::int64_t id = m_table.insert(row, false);
        Running index =
            m_statements.prepared("INSERT INTO sealed SELECT record, ?1, seq - ?2 FROM change WHERE "
                                  "stream=?4 AND seq BETWEEN ?2 AND ?3");
        index->bind(1, id);
        index->bind(2, row.first);
        index->bind(3, row.last);
        index->bind(4, m_table.localOf(row.stream));
        index->exec();
        dropTail(row);
        transaction.commit();
        return Done{};
    });
    if (!result) m_folding.forget();
    return result;
}

Result<SealedAs> SegmentShelf::keep(SealedBatch& batch)
{
    auto result = guarded<SealedAs>(m_path, [&]() -> Result<SealedAs> {
        SQLite::Transaction transaction(m_database, SQLite::TransactionBehavior::IMMEDIATE);
        if (batch.parts.empty() || !m_table.isNext(batch.parts.front().row)) return SealedAs::Overtaken;
        const SegmentRow& first = batch.parts.front().row;
        const SegmentRow& last = batch.parts.back().row;
        std::vector<Uuid> records;
        for (const SealedBatch::Part& part : batch.parts)
            for (const Change& change : part.changes) records.push_back(change.record);
        std::sort(records.begin(), records.end());
        const bool isTwice = std::adjacent_find(records.begin(), records.end()) != records.end();
        if (isTwice || m_folding.lines().knowsAny(records)) return SealedAs::NotNew;
        for (SealedBatch::Part& part : batch.parts) {
            m_table.addLines(m_table.insert(part.row, false), part.changes, part.row.first);
            m_folding.take(part.changes, {}, records);
        }
        if (!batch.import.empty())
            putSetting(m_database, importRangeKey(batch.import, first.stream, first.first),
                std::to_string(last.last));
        transaction.commit();
        return SealedAs::Kept;
    });
    if (!result) m_folding.forget();
    return result;
}

Result<std::int64_t> SegmentShelf::lastOf(const StreamId& stream)
{
    return guarded<std::int64_t>(m_path, [&] { return m_table.lastOf(stream); });
}

Result<Done> SegmentShelf::markPassedOn(
    const std::string& route, const std::vector<SegmentId>& ids, Instant at)
{
    return guarded<Done>(m_path, [&] {
        SQLite::Transaction transaction(m_database, SQLite::TransactionBehavior::IMMEDIATE);
        for (const SegmentId& id : ids) {
            Running insert = m_statements.prepared(
                "INSERT OR IGNORE INTO passed_on SELECT id, ?, ? FROM segment WHERE hash=?");
            insert->bind(1, route);
            insert->bind(2, toMs(at));
            bindBytes(*insert, 3, id);
            insert->exec();
        }
        transaction.commit();
        return Done{};
    });
}

Result<Done> SegmentShelf::forgetPassedOn(const std::string& route)
{
    return guarded<Done>(m_path, [&] {
        Running forget = m_statements.prepared("DELETE FROM passed_on WHERE route=?");
        forget->bind(1, route);
        forget->exec();
        return Done{};
    });
}

Result<Done> SegmentShelf::keepAside(const AsideRow& row)
{
    return guarded<Done>(m_path, [&] {
        Running insert = m_statements.prepared("INSERT OR IGNORE INTO kept_aside VALUES (?,?,?,?)");
        bindBytes(*insert, 1, row.hash);
        insert->bind(2, row.origin);
        insert->bind(3, row.reason);
        insert->bind(4, toMs(row.at));
        insert->exec();
        return Done{};
    });
}

} // namespace duskrow::store
