// SPDX-License-Identifier: MIT
#pragma once

#include "store/folding.h"
#include "store/segment_table.h"

namespace duskrow::store {

// Writes what the exchange brings: segments in, the own tail sealed, what went where. Used on the writer's
// thread only.
class SegmentShelf {
public:
    SegmentShelf(SQLite::Database& database, std::string path, Folding& folding);

    domain::Result<Taken> take(IncomingSegment segment);
    // Puts a segment in the place of the rows it was made of. The records stay as they are. Nothing is done
    // when they are not all there: another has sealed them meanwhile.
    domain::Result<domain::Done> seal(const SegmentRow& segment);
    // As Store::keepSealed.
    domain::Result<SealedAs> keep(SealedBatch& batch);
    // The highest number of a stream that stands in a segment; 0 when none does.
    domain::Result<std::int64_t> lastOf(const domain::StreamId& stream);
    // Makes the file smaller when much of it is empty.
    domain::Result<domain::Done> giveBackPages();
    domain::Result<domain::Done> markPassedOn(
        const std::string& route, const std::vector<SegmentId>& ids, domain::Instant at);
    domain::Result<domain::Done> forgetPassedOn(const std::string& route);
    domain::Result<domain::Done> keepAside(const AsideRow& row);

private:
    bool isFork(const IncomingSegment& segment);
    void fill(const SegmentTable::Place& place, IncomingSegment& segment, Taken& taken);
    void use(std::int64_t id, const SegmentId& hash, std::vector<domain::Change> changes, Taken& taken);
    std::vector<domain::Change> changesIn(std::int64_t id);
    bool isTailThere(const SegmentRow& row);
    void dropTail(const SegmentRow& row);

    SQLite::Database& m_database;
    std::string m_path;
    Folding& m_folding;
    SegmentTable m_table;
    Statements m_statements;
};

} // namespace duskrow::store
