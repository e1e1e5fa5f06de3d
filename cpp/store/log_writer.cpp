// SPDX-License-Identifier: MIT
#include "store/log_writer.h"

#include <SQLiteCpp/Transaction.h>

#include "store/sqlite_error.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

std::int64_t localNumber(SQLite::Database& database, const StreamId& stream)
{
    const std::string blob(reinterpret_cast<const char*>(stream.data()), stream.size());
    SQLite::Statement insert(database, "INSERT OR IGNORE INTO stream (id) VALUES (?)");
    insert.bind(1, blob.data(), static_cast<int>(blob.size()));
    insert.exec();
    SQLite::Statement query(database, "SELECT local FROM stream WHERE id=?");
    query.bind(1, blob.data(), static_cast<int>(blob.size()));
    query.executeStep();
    return query.getColumn(0).getInt64();
}

std::vector<Change> changesOfRecord(SQLite::Statement& query, const Uuid& record)
{
    std::vector<Change> changes;
    const std::string id = blobOf(record);
    query.reset();
    query.bind(1, id.data(), static_cast<int>(id.size()));
    while (query.executeStep())
        if (auto change = readChange(query.getColumn(0).getString())) changes.push_back(std::move(*change));
    query.reset();
    return changes;
}

} // namespace

LogWriter::LogWriter(SQLite::Database& database, std::string path, Uuid programme, StreamKey key)
    : m_database(database), m_path(std::move(path)), m_programme(programme), m_key(std::move(key)),
      m_tables(database)
{
}

Change LogWriter::appended(const Edit& edit, const Batch& batch, std::int64_t seq)
{
    std::vector<Change> changes = changesOfRecord(*m_ofRecord, edit.record);
    Change change{.programme = m_programme,
        .ref = {m_key.stream, seq},
        .author = batch.author,
        .kind = edit.kind,
        .record = edit.record,
        .site = edit.site,
        .at = batch.at,
        .offset = batch.offset,
        .fields = {},
        .saw = {}};
    const Folded before = changes.empty() ? Folded{} : fold(changes);
    for (const auto& [field, value] : edit.fields) change.fields[field] = {value, baseOf(before, field)};
    if (edit.fields.contains("withdrawn") && !changes.empty()) change.saw = allSeen(before);

    const std::string body = canonicalJson(change);
    const std::string id = blobOf(edit.record);
    m_insert->reset();
    m_insert->bind(1, m_localStream);
    m_insert->bind(2, seq);
    m_insert->bind(3, id.data(), static_cast<int>(id.size()));
    m_insert->bind(4, body);
    m_insert->exec();

    changes.push_back(change);
    m_tables.put(fold(changes));
    return change;
}

Result<Kept> LogWriter::keep(const Batch& batch)
{
    for (const Edit& edit : batch.edits)
        if (const auto checked = checkEdit(edit); !checked) return checked.error();
    return guarded<Kept>(m_path, [&] {
        SQLite::Transaction transaction(m_database, SQLite::TransactionBehavior::IMMEDIATE);
        if (m_localStream == 0) {
            m_insert.emplace(m_database, "INSERT INTO change VALUES (?,?,?,?)");
            m_ofRecord.emplace(m_database, "SELECT body FROM change WHERE record=?");
            m_localStream = localNumber(m_database, m_key.stream);
        }
        SQLite::Statement last(m_database, "SELECT coalesce(max(seq),0) FROM change WHERE stream=?");
        last.bind(1, m_localStream);
        last.executeStep();
        std::int64_t seq = last.getColumn(0).getInt64();
        Kept kept;
        for (const Edit& edit : batch.edits) {
            if (edit.fields.empty()) continue;
            kept.changes.push_back(appended(edit, batch, ++seq).ref);
        }
        if (batch.draftDone) {
            SQLite::Statement drop(m_database, "DELETE FROM draft WHERE key=?");
            drop.bind(1, *batch.draftDone);
            drop.exec();
        }
        transaction.commit();
        return kept;
    });
}

Result<Done> LogWriter::saveDraft(const std::string& key, const std::string& body)
{
    return guarded<Done>(m_path, [&] {
        SQLite::Statement save(m_database, "INSERT OR REPLACE INTO draft VALUES (?,?)");
        save.bind(1, key);
        save.bind(2, body);
        save.exec();
        return Done{};
    });
}

Result<Done> LogWriter::dropDraft(const std::string& key)
{
    return guarded<Done>(m_path, [&] {
        SQLite::Statement drop(m_database, "DELETE FROM draft WHERE key=?");
        drop.bind(1, key);
        drop.exec();
        return Done{};
    });
}

} // namespace duskrow::store
