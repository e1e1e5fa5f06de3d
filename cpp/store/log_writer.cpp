// SPDX-License-Identifier: MIT
#include "store/log_writer.h"

#include <SQLiteCpp/Transaction.h>
#include <algorithm>

#include "store/import_ledger.h"
#include "store/setting.h"
#include "store/sqlite_error.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

// The field whose text takes most room in a change that is too large to be read again.
Error tooLong(const Change& change)
{
    std::string field = change.kind;
    std::size_t most = 0;
    for (const auto& [name, set] : change.fields)
        if (const auto* text = std::get_if<std::string>(&set.value); text && text->size() > most) {
            most = text->size();
            field = name;
        }
    return Error{ErrorCode::TooLong, {field, std::to_string(mostChangeBytes / 2)}};
}

} // namespace

LogWriter::LogWriter(
    SQLite::Database& database, std::string path, Uuid programme, StreamId stream, Folding& folding)
    : m_database(database), m_path(std::move(path)), m_programme(programme), m_stream(stream),
      m_folding(folding), m_statements(database)
{
}

LogWriter::Tail LogWriter::readTail()
{
    Running add = m_statements.prepared("INSERT OR IGNORE INTO stream (id) VALUES (?)");
    bindBytes(*add, 1, m_stream);
    add->exec();
    Running query = m_statements.prepared(
        "SELECT local, max(coalesce((SELECT max(seq) FROM change WHERE stream=local), 0), "
        "coalesce((SELECT max(last) FROM segment WHERE stream=local), 0)) FROM stream WHERE id=?");
    bindBytes(*query, 1, m_stream);
    query->executeStep();
    return {query->getColumn(0).getInt64(), query->getColumn(1).getInt64()};
}

// The versions of a field that an edit replaces. Who is no coordinator replaces only his own where people
// differ: settling is not his. A coordinator also answers the proposals.
std::vector<ChangeRef> LogWriter::baseFor(
    const Folded& before, const std::string& kind, const std::string& field, std::span<const Change> changes)
{
    std::vector<ChangeRef> base = baseOf(before, field);
    const Roster& roster = m_folding.roster();
    if (roster.isAlone()) return base;
    if (roster.isCoordinator(m_stream)) {
        const std::set<ChangeRef> proposals(before.proposals.begin(), before.proposals.end());
        for (const Change& change : changes)
            if (proposals.contains(change.ref) && change.fields.contains(field)) base.push_back(change.ref);
        return base;
    }
    const RecordKind* known = findKind(kind);
    const Field* row = known ? known->find(field) : nullptr;
    if (base.size() < 2 || !row || row->merge != MergeClass::Measured) return base;
    const Uuid me = roster.memberOf(m_stream);
    std::erase_if(base, [&](const ChangeRef& ref) { return roster.memberOf(ref.stream) != me; });
    return base;
}

// What an edit of a record that is there already sets, and the versions that it replaces.
Result<Done> LogWriter::setFields(Change& change, Edit edit)
{
    const std::vector<Change> changes = m_folding.changesOf(edit.record);
    const Folded before = changes.empty() ? Folded{} : m_folding.folded(changes);
    if (!changes.empty() && before.kind != edit.kind) return Error{ErrorCode::RecordMissing, {edit.kind}};
    if (edit.fields.contains("withdrawn") && !changes.empty()) change.saw = allSeen(before);
    for (auto& [field, value] : edit.fields)
        change.fields[field] = {std::move(value), baseFor(before, edit.kind, field, changes)};
    return Done{};
}

Result<Change> LogWriter::append(Edit edit, const Batch& batch, const Tail& tail, bool isFresh)
{
    Change change{.programme = m_programme,
        .ref = {m_stream, tail.seq},
        .author = batch.author,
        .kind = edit.kind,
        .record = edit.record,
        .site = edit.site,
        .at = batch.at,
        .offset = batch.offset,
        .fields = {},
        .saw = {}};
    std::vector<ChangeRef> ruledOn;
    if (edit.kind == "ruling") ruledOn = sawOf(edit);
    if (isFresh) {
        change.fields.reserve(edit.fields.size());
        for (auto& [field, value] : edit.fields)
            change.fields.emplace_hint(change.fields.end(), field, FieldSet{std::move(value), {}});
    } else if (const auto set = setFields(change, std::move(edit)); !set) {
        return set.error();
    }
    if (change.kind == "ruling") change.saw = std::move(ruledOn);

    const std::string body = canonicalJson(change);
    if (body.size() > mostChangeBytes) return tooLong(change);
    Running insert = m_statements.prepared("INSERT INTO change VALUES (?,?,?,?)");
    insert->bind(1, tail.local);
    insert->bind(2, tail.seq);
    bindBytes(*insert, 3, change.record.bytes);
    insert->bindNoCopy(4, body);
    insert->exec();
    return change;
}

// A ruling is about every version of its record that is here now.
std::vector<ChangeRef> LogWriter::sawOf(const Edit& ruling)
{
    std::set<ChangeRef> saw;
    const auto subject = ruling.fields.find("record");
    const auto* text = subject == ruling.fields.end() ? nullptr : std::get_if<std::string>(&subject->second);
    for (const Change& change : m_folding.changesOf(text ? parseUuid(*text).value_or(Uuid{}) : Uuid{}))
        saw.insert(change.ref);
    return {saw.begin(), saw.end()};
}

Result<Kept> LogWriter::keep(Batch batch)
{
    for (const Edit& edit : batch.edits)
        if (const auto checked = checkEdit(edit); !checked) return checked.error();
    auto result = guarded<Kept>(m_path, [&]() -> Result<Kept> {
        SQLite::Transaction transaction(m_database, SQLite::TransactionBehavior::IMMEDIATE);
        Tail tail = m_tail ? *m_tail : readTail();
        Kept kept;
        std::vector<Change> changes;
        std::vector<Uuid> fresh;
        for (Edit& edit : batch.edits) {
            if (edit.fields.empty()) continue;
            ++tail.seq;
            const bool isFresh = !m_folding.lines().isKnown(edit.record);
            if (isFresh) fresh.push_back(edit.record);
            auto change = append(std::move(edit), batch, tail, isFresh);
            if (!change) return change.error();
            kept.changes.push_back(change->ref);
            changes.push_back(std::move(*change));
        }
        std::sort(fresh.begin(), fresh.end());
        m_folding.take(changes, {}, fresh);
        if (batch.draftDone) deleteDraft(*batch.draftDone);
        if (!batch.import.empty() && !kept.changes.empty()) noteImport(batch.import, kept);
        transaction.commit();
        m_tail = tail; // only now: what is rolled back was never numbered
        return kept;
    });
    if (!result) m_folding.forget();
    return result;
}

// The numbers of one batch follow each other.
void LogWriter::noteImport(const std::string& import, const Kept& kept)
{
    const ChangeRef& first = kept.changes.front();
    putSetting(
        m_database, importRangeKey(import, first.stream, first.seq), std::to_string(kept.changes.back().seq));
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
