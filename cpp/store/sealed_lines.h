// SPDX-License-Identifier: MIT
#pragma once

#include <list>
#include <memory>
#include <span>

#include "domain/log/change.h"
#include "store/statements.h"

namespace duskrow::store {

// The unpacked payload of a segment, line by line.
struct UnpackedSegment {
    std::string text;
    std::vector<std::string_view> lines; // into `text`, without line feeds
    bool isUnread = false; // needs an ability that this version lacks: passed on, and not used
};

// Reads changes out of segments. The last few that were asked for stay unpacked. Used on one thread only.
class SealedLines {
public:
    explicit SealedLines(SQLite::Database& database) : m_database(database), m_statements(database) { }

    // Null when there is no such segment, or its payload does not unpack.
    std::shared_ptr<const UnpackedSegment> segment(std::int64_t id);

    // The changes of a record, from segments and from the own tail, in no particular order; without those in
    // the segments that are at hand already.
    std::vector<domain::Change> changesOf(
        const domain::Uuid& record, std::span<const std::int64_t> atHand = {});
    void clear();

    // How many changes of a record the log holds, in segments and in rows.
    std::int64_t countOf(const domain::Uuid& record);
    bool isKnown(const domain::Uuid& record); // whether any
    // Whether any of one of these records, which are in their order.
    bool knowsAny(std::span<const domain::Uuid> records);

private:
    struct Held {
        std::int64_t id = 0;
        bool isWhole = false; // else a fuller form may take its place
        std::int64_t version = 0; // of the file when it was read
        std::shared_ptr<const UnpackedSegment> unpacked;
    };

    std::int64_t version();

    SQLite::Database& m_database;
    Statements m_statements;
    std::list<Held> m_held; // the last used first
    std::size_t m_bytes = 0;
};

} // namespace duskrow::store
