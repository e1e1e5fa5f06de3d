// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "store/segments.h"
#include "store/statements.h"

namespace duskrow::store {

// The rows of the segments, and the index of the changes in them. Used on the writer's thread only.
class SegmentTable {
public:
    struct Place {
        std::int64_t id = 0;
        bool isWhole = false;
    };

    explicit SegmentTable(SQLite::Database& database) : m_database(database), m_statements(database) { }

    // The short number of a stream in this file; it gets one when it has none.
    std::int64_t localOf(const domain::StreamId& stream);
    std::optional<Place> find(const SegmentId& id);
    // Returns its number in this file.
    std::int64_t insert(const SegmentRow& row, bool waits);
    // Whether the one before it is here and used.
    bool hasPredecessor(const SegmentRow& row);
    // Whether its stream ends just before it, in rows as in segments.
    bool isNext(const SegmentRow& row);
    // The highest number of a stream that stands in a segment; 0 when none does.
    std::int64_t lastOf(const domain::StreamId& stream);
    // Where the changes of a segment are found. first  the segment's first number
    void addLines(std::int64_t id, std::span<const domain::Change> changes, std::int64_t first);

private:
    SQLite::Database& m_database;
    Statements m_statements;
};

} // namespace duskrow::store
