// SPDX-License-Identifier: MIT
#include "store/segment_table.h"

namespace duskrow::store {

using namespace duskrow::domain;

std::int64_t SegmentTable::localOf(const StreamId& stream)
{
    Running add = m_statements.prepared("INSERT OR IGNORE INTO stream (id) VALUES (?)");
    bindBytes(*add, 1, stream);
    add->exec();
    Running query = m_statements.prepared("SELECT local FROM stream WHERE id=?");
    bindBytes(*query, 1, stream);
    query->executeStep();
    return query->getColumn(0).getInt64();
}

std::optional<SegmentTable::Place> SegmentTable::find(const SegmentId& id)
{
    Running query = m_statements.prepared("SELECT id, whole FROM segment WHERE hash=?");
    bindBytes(*query, 1, id);
    if (!query->executeStep()) return std::nullopt;
    return Place{query->getColumn(0).getInt64(), query->getColumn(1).getInt() != 0};
}

std::int64_t SegmentTable::insert(const SegmentRow& row, bool waits)
{
    Running insert = m_statements.prepared(
        "INSERT INTO segment (stream, first, last, hash, previous, whole, waits, signature, header, payload) "
        "VALUES (?,?,?,?,?,?,?,?,?,?)");
    insert->bind(1, localOf(row.stream));
    insert->bind(2, row.first);
    insert->bind(3, row.last);
    bindBytes(*insert, 4, row.id);
    bindBytes(*insert, 5, row.previous);
    insert->bind(6, row.isWhole ? 1 : 0);
    insert->bind(7, waits ? 1 : 0);
    bindBytes(*insert, 8, row.signature);
    bindBytes(*insert, 9, row.header);
    bindBytes(*insert, 10, row.payload);
    insert->exec();
    return m_database.getLastInsertRowid();
}

bool SegmentTable::hasPredecessor(const SegmentRow& row)
{
    if (row.first == 1) return true;
    Running query = m_statements.prepared("SELECT last, stream FROM segment WHERE hash=? AND waits=0");
    bindBytes(*query, 1, row.previous);
    if (!query->executeStep()) return false;
    return query->getColumn(0).getInt64() == row.first - 1
        && query->getColumn(1).getInt64() == localOf(row.stream);
}

std::int64_t SegmentTable::lastOf(const StreamId& stream)
{
    Running query = m_statements.prepared("SELECT coalesce(max(last), 0) FROM segment WHERE stream=?");
    query->bind(1, localOf(stream));
    query->executeStep();
    return query->getColumn(0).getInt64();
}

void SegmentTable::addLines(std::int64_t id, std::span<const Change> changes, std::int64_t first)
{
    for (const Change& change : changes) {
        Running insert = m_statements.prepared("INSERT OR IGNORE INTO sealed VALUES (?,?,?)");
        insert->bindNoCopy(1, change.record.bytes.data(), static_cast<int>(change.record.bytes.size()));
        insert->bind(2, id);
        insert->bind(3, change.ref.seq - first);
        insert->exec();
    }
}

bool SegmentTable::isNext(const SegmentRow& row)
{
    if (!hasPredecessor(row)) return false;
    Running query = m_statements.prepared("SELECT EXISTS (SELECT 1 FROM change WHERE stream=?1 AND seq>=?2) "
                                          "OR EXISTS (SELECT 1 FROM segment WHERE stream=?1 AND last>=?2)");
    query->bind(1, localOf(row.stream));
    query->bind(2, row.first);
    query->executeStep();
    return query->getColumn(0).getInt() == 0;
}

} // namespace duskrow::store
