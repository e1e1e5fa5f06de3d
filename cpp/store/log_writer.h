// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/log/edit.h"
#include "store/folding.h"

namespace duskrow::store {

// What one tap on "keep" does: all of it, or none.
struct Batch {
    domain::Uuid author;
    domain::Instant at;
    std::chrono::minutes offset{0};
    std::vector<domain::Edit> edits;
    std::optional<std::string> draftDone; // the draft these edits came from, dropped with the same commit
    std::string import = {}; // the import they belong to: their numbers are noted with the same commit
};

struct Kept {
    std::vector<domain::ChangeRef> changes; // one for each edit that changed anything
};

// Appends changes to the log and brings the current tables along, in one transaction. Used on one thread
// only.
class LogWriter {
public:
    LogWriter(SQLite::Database& database, std::string path, domain::Uuid programme, domain::StreamId stream,
        Folding& folding);

    // Errors  those of checkEdit, before anything is written; TooLong when a change would be larger than can
    // be
    //         read again; RecordMissing when the id belongs to a record of another kind; DiskFull,
    //         DiskFailed ...; nothing is changed by a keep that failed
    domain::Result<Kept> keep(Batch batch);

    // After something else was written to the own stream: where it ends is read anew.
    void lookAgain() { m_tail.reset(); }

    domain::Result<domain::Done> saveDraft(const std::string& key, const std::string& body);
    domain::Result<domain::Done> dropDraft(const std::string& key);

private:
    // Where the own stream ends.
    struct Tail {
        std::int64_t local = 0; // the stream's short number in this file
        std::int64_t seq = 0;
    };
    Tail readTail();
    [[nodiscard]] std::vector<domain::ChangeRef> baseFor(const domain::Folded& before,
        const std::string& kind, const std::string& field, std::span<const domain::Change> changes);
    std::vector<domain::ChangeRef> sawOf(const domain::Edit& ruling);
    domain::Result<domain::Change> append(
        domain::Edit edit, const Batch& batch, const Tail& tail, bool isFresh);
    domain::Result<domain::Done> setFields(domain::Change& change, domain::Edit edit);
    void deleteDraft(const std::string& key);
    void noteImport(const std::string& import, const Kept& kept);

    SQLite::Database& m_database;
    std::string m_path;
    domain::Uuid m_programme;
    domain::StreamId m_stream;
    Folding& m_folding;
    Statements m_statements;
    std::optional<Tail> m_tail;
};

} // namespace duskrow::store
