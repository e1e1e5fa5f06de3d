// SPDX-License-Identifier: MIT
#include "store/log_writer.h"

#include <SQLiteCpp/Transaction.h>

#include "store/sqlite_error.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

void bindBytes(SQLite::Statement& statement, int at, const auto& bytes)
{
    statement.bind(at, bytes.data(), static_cast<int>(bytes.size()));
}

// The field whose text takes most room in a change that is too large to be read again.
Error tooLong(const Edit& edit)
{
    std::string field = edit.kind;
    std::size_t most = 0;
    for (const auto& [name, value] : edit.fields)
        if (const auto* text = std::get_if<std::string>(&value); text && text->size() > most) {
            most = text->size();
            field = name;
        }
    return Error{ErrorCode::TooLong, {field, std::to_string(mostChangeBytes / 2)}};
}

} // namespace

LogWriter::LogWriter(SQLite::Database& database, std::string path, Uuid programme, StreamKey key)
    : m_database(database), m_path(std::move(path)), m_programme(programme), m_key(std::move(key)),
      m_tables(database), m_statements(database)
{
}

LogWriter::Tail LogWriter::readTail()
{
    Running add = m_statements.prepared("INSERT OR IGNORE INTO stream (id) VALUES (?)");
    bindBytes(*add, 1, m_key.stream);
    add->exec();
    Running query = m_statements.prepared("SELECT local, coalesce((SELECT max(seq) FROM change "
                                          "WHERE stream=local), 0) FROM stream WHERE id=?");
    bindBytes(*query, 1, m_key.stream);
    query->executeStep();
    return {query->getColumn(0).getInt64(), query->getColumn(1).getInt64()};
}

std::vector<Change> LogWriter::changesOf(const Uuid& record)
{
    std::vector<Change> changes;
    Running query = m_statements.prepared("SELECT body FROM change WHERE record=?");
    bindBytes(*query, 1, record.bytes);
    while (query->executeStep())
        if (auto change = readChange(query->getColumn(0).getString())) changes.push_back(std::move(*change));
    return changes;
}

Result<ChangeRef> LogWriter::append(const Edit& edit, const Batch& batch, const Tail& tail)
{
    std::vector<Change> changes = changesOf(edit.record);
    const Folded before = changes.empty() ? Folded{} : fold(changes);
    if (!changes.empty() && before.kind != edit.kind) return Error{ErrorCode::RecordMissing, {edit.kind}};
    Change change{.programme = m_programme,
        .ref = {m_key.stream, tail.seq},
        .author = batch.author,
        .kind = edit.kind,
        .record = edit.record,
        .site = edit.site,
        .at = batch.at,
        .offset = batch.offset,
        .fields = {},
        .saw = {}};
    for (const auto& [field, value] : edit.fields) change.fields[field] = {value, baseOf(before, field)};
    if (edit.fields.contains("withdrawn") && !changes.empty()) change.saw = allSeen(before);

    const std::string body = canonicalJson(change);
    if (body.size() > mostChangeBytes) return tooLong(edit);
    Running insert = m_statements.prepared("INSERT INTO change VALUES (?,?,?,?)");
    insert->bind(1, tail.local);
    insert->bind(2, tail.seq);
    bindBytes(*insert, 3, edit.record.bytes);
    insert->bindNoCopy(4, body);
    insert->exec();

    const ChangeRef ref = change.ref;
    changes.push_back(std::move(change));
    m_tables.put(fold(changes));
    return ref;
}

Result<Kept> LogWriter::keep(const Batch& batch)
{
    for (const Edit& edit : batch.edits)
        if (const auto checked = checkEdit(edit); !checked) return checked.error();
    return guarded<Kept>(m_path, [&]() -> Result<Kept> {
        SQLite::Transaction transaction(m_database, SQLite::TransactionBehavior::IMMEDIATE);
        Tail tail = m_tail ? *m_tail : readTail();
        Kept kept;
        for (const Edit& edit : batch.edits) {
            if (edit.fields.empty()) continue;
            ++tail.seq;
            const auto ref = append(edit, batch, tail);
            if (!ref) return ref.error();
            kept.changes.push_back(*ref);
        }
        if (batch.draftDone) deleteDraft(*batch.draftDone);
        transaction.commit();
        m_tail = tail; // only now: what is rolled back was never numbered
        return kept;
    });
}

Result<Done> LogWriter::saveDraft(const std::string& key, const std::string& body)
{
    return guarded<Done>(m_path, [&] {
        Running save = m_statements.prepared("INSERT OR REPLACE INTO draft VALUES (?,?)");
        save->bind(1, key);
        save->bind(2, body);
        save->exec();
        return Done{};
    });
}

Result<Done> LogWriter::dropDraft(const std::string& key)
{
    return guarded<Done>(m_path, [&] {
        deleteDraft(key);
        return Done{};
    });
}

void LogWriter::deleteDraft(const std::string& key)
{
    Running drop = m_statements.prepared("DELETE FROM draft WHERE key=?");
    drop->bind(1, key);
    drop->exec();
}

} // namespace duskrow::store
