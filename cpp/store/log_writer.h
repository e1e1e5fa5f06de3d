// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/log/edit.h"
#include "store/current_tables.h"
#include "store/stream_key.h"

namespace duskrow::store {

// What one tap on "keep" does: all of it, or none.
struct Batch {
    domain::Uuid author;
    domain::Instant at;
    std::chrono::minutes offset{0};
    std::vector<domain::Edit> edits;
    std::optional<std::string> draftDone; // the draft these edits came from, dropped with the same commit
};

struct Kept {
    std::vector<domain::ChangeRef> changes; // one for each edit that changed anything
};

// Appends changes to the log and brings the current tables along, in one transaction. Used on one thread
// only.
class LogWriter {
public:
    LogWriter(SQLite::Database& database, std::string path, domain::Uuid programme, StreamKey key);

    // Errors  those of checkEdit, before anything is written; DiskFull, DiskFailed ... with nothing changed
    domain::Result<Kept> keep(const Batch& batch);

    domain::Result<domain::Done> saveDraft(const std::string& key, const std::string& body);
    domain::Result<domain::Done> dropDraft(const std::string& key);

    CurrentTables& tables() { return m_tables; }

private:
    domain::Change appended(const domain::Edit& edit, const Batch& batch, std::int64_t seq);

    SQLite::Database& m_database;
    std::string m_path;
    domain::Uuid m_programme;
    StreamKey m_key;
    CurrentTables m_tables;
    std::int64_t m_localStream = 0;
    std::optional<SQLite::Statement> m_insert;
    std::optional<SQLite::Statement> m_ofRecord;
};

} // namespace duskrow::store
