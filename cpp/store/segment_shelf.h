// SPDX-License-Identifier: MIT
#pragma once

#include "store/folding.h"
#include "store/segments.h"

namespace duskrow::store {

// Writes what the exchange brings: segments in, the own tail sealed, what went where. Used on the writer's
// thread only.
class SegmentShelf {
public:
    SegmentShelf(SQLite::Database& database, std::string path, Folding& folding);

    domain::Result<Taken> take(IncomingSegment segment);
    // Puts a segment in the place of the rows it was made of. The records stay as they are.
    domain::Result<domain::Done> seal(const SegmentRow& segment);
    // Makes the file smaller when much of it is empty.
    domain::Result<domain::Done> giveBackPages();
    domain::Result<domain::Done> markPassedOn(
        const std::string& route, const std::vector<SegmentId>& ids, domain::Instant at);
    domain::Result<domain::Done> forgetPassedOn(const std::string& route);
    domain::Result<domain::Done> keepAside(const AsideRow& row);

private:
    struct Place {
        std::int64_t id = 0;
        bool isWhole = false;
    };
    std::int64_t localOf(const domain::StreamId& stream);
    std::optional<Place> find(const SegmentId& id);
    std::int64_t insert(const SegmentRow& row, bool waits);
    bool hasPredecessor(const SegmentRow& row);
    bool isFork(const IncomingSegment& segment);
    void fill(const Place& place, IncomingSegment& segment, Taken& taken);
    void use(std::int64_t id, const SegmentId& hash, std::vector<domain::Change> changes, Taken& taken);
    void addLines(std::int64_t id, const std::vector<domain::Change>& changes, std::int64_t first);
    std::vector<domain::Change> changesIn(std::int64_t id);
    void dropTail(const SegmentRow& row);

    SQLite::Database& m_database;
    std::string m_path;
    Folding& m_folding;
    Statements m_statements;
};

} // namespace duskrow::store
