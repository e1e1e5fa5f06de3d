// SPDX-License-Identifier: MIT
#include "store/folding.h"

#include <SQLiteCpp/Transaction.h>
#include <algorithm>

#include "domain/records/roster.h"
#include "store/founders.h"
#include "store/segments.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

// Whether the bytes of a change may be of such a kind, without reading them. The words may also stand within
// values that this version does not know.
bool mayBeRosterKind(std::string_view body)
{
    constexpr std::string_view word = "\"kind\":\"";
    for (std::size_t at = body.find(word); at != std::string_view::npos; at = body.find(word, at)) {
        at += word.size();
        if (isRosterKind(body.substr(at, body.find('"', at) - at))) return true;
    }
    return false;
}

// The record that a ruling is about: the one that its id was made of, whatever else its changes say.
Uuid subjectOf(std::span<const Change> ruling, const Uuid& programme)
{
    for (const Change& change : ruling) {
        const auto said = change.fields.find("record");
        const auto* text =
            said == change.fields.end() ? nullptr : std::get_if<std::string>(&said->second.value);
        const Uuid subject = text ? parseUuid(*text).value_or(Uuid{}) : Uuid{};
        if (!subject.isNil() && rulingId(programme, subject) == change.record) return subject;
    }
    return {};
}

} // namespace

Folding::Folding(SQLite::Database& database, Uuid programme, const StreamId& own)
    : m_database(database), m_programme(programme), m_own(own), m_tables(database), m_lines(database),
      m_statements(database)
{
}

bool Folding::isStale()
{
    Running query = m_statements.prepared("SELECT value FROM setting WHERE key='folded_for'");
    return m_tables.isStale() || !query->executeStep() || query->getColumn(0).getString() != formatHex(m_own);
}

std::set<StreamId> Folding::founders()
{
    Running query = m_statements.prepared("SELECT value FROM setting WHERE key='founders'");
    return query->executeStep() ? streamsIn(query->getColumn(0).getString()) : std::set<StreamId>{};
}

std::vector<StreamId> Folding::streams()
{
    std::vector<StreamId> all;
    Running query = m_statements.prepared("SELECT id FROM stream ORDER BY local");
    while (query->executeStep()) all.push_back(uuidOf(query->getColumn(0)).bytes);
    return all;
}

void Folding::forget()
{
    m_isLoaded = false;
    m_lines.clear();
}

const Roster& Folding::roster()
{
    load();
    return m_roster;
}

void Folding::load()
{
    if (m_isLoaded) return;
    m_rosterChanges.clear();
    std::vector<Uuid> records;
    {
        Running query = m_statements.prepared("SELECT record FROM now_roster");
        while (query->executeStep()) records.push_back(uuidOf(query->getColumn(0)));
    }
    for (const Uuid& record : records)
        for (Change& change : changesOf(record)) m_rosterChanges.push_back(std::move(change));
    m_roster = readRoster();
    m_isLoaded = true;
    readRulings();
}

void Folding::readRulings()
{
    m_rulings.clear();
    std::vector<Uuid> records;
    {
        Running query = m_statements.prepared("SELECT id FROM now_ruling");
        while (query->executeStep()) records.push_back(uuidOf(query->getColumn(0)));
    }
    for (const Uuid& record : records) putRuling(changesOf(record));
}

void Folding::putRuling(std::span<const Change> changes)
{
    const Uuid subject = subjectOf(changes, m_programme);
    if (subject.isNil()) return;
    if (auto seen = rulingIn(changes, m_roster))
        m_rulings[subject] = std::move(*seen);
    else
        m_rulings.erase(subject);
}

Folded Folding::folded(std::span<const Change> ofOneRecord)
{
    load();
    const auto ruling = m_rulings.find(ofOneRecord.front().record);
    return fold(ofOneRecord, {&m_roster, ruling == m_rulings.end() ? nullptr : &ruling->second});
}

void Folding::put(std::span<const Change> changes, bool isNew)
{
    const Folded found = folded(changes);
    if (!isNew)
        for (const Change& change : changes)
            if (change.kind != found.kind) m_tables.drop(change.kind, change.record);
    m_tables.put(found, isNew);
}

std::vector<Change> Folding::refold(const Uuid& record)
{
    std::vector<Change> changes = changesOf(record);
    if (!changes.empty()) put(changes, false);
    return changes;
}

// Whether a change that is the only one of its record counts, whatever else is known.
bool Folding::countsByItself(const Change& change) const
{
    if (change.kind == "ruling" || m_rulings.contains(change.record)) return false;
    return m_roster.countsAlways(change.ref.stream)
        || m_roster.weigh(std::span(&change, 1)).front() == Standing::Counts;
}

void Folding::take(
    std::span<Change> added, std::span<const std::int64_t> segments, std::span<const Uuid> fresh)
{
    load();
    const auto isBefore = [](const Change& a, const Change& b) {
        return a.record != b.record ? a.record < b.record : a.ref < b.ref;
    };
    if (!std::is_sorted(added.begin(), added.end(), isBefore))
        std::sort(added.begin(), added.end(), isBefore);
    takeRoster(added);
    std::vector<Uuid> ruledOn;
    for (auto from = added.begin(); from != added.end();) {
        const Uuid record = from->record;
        const auto to = std::find_if(from, added.end(), [&](const Change& c) { return c.record != record; });
        const std::span<const Change> own(from, to);
        while (!fresh.empty() && fresh.front() < record) fresh = fresh.subspan(1);
        const bool isFresh = !fresh.empty() && fresh.front() == record;
        const bool isNew = isFresh || m_lines.countOf(record) <= static_cast<std::int64_t>(own.size());
        if (isNew && own.size() == 1 && countsByItself(*from)) {
            m_tables.putOnly(*from);
            from = to;
            continue;
        }
        std::vector<Change> all;
        if (!isNew) {
            all = m_lines.changesOf(record, segments);
            if (!segments.empty()) all.insert(all.end(), own.begin(), own.end());
        }
        const std::span<const Change> changes = isNew ? own : std::span<const Change>(all);
        put(changes, isNew);
        if (own.front().kind == "ruling") {
            putRuling(changes);
            const Uuid subject = subjectOf(changes, m_programme);
            if (!subject.isNil()) ruledOn.push_back(subject);
        }
        from = to;
    }
    for (const Uuid& record : ruledOn) refold(record);
}

Roster Folding::readRoster()
{
    Roster roster = Roster::from(m_programme, founders(), m_rosterChanges);
    roster.countHere(m_own);
    return roster;
}

void Folding::takeRoster(std::span<const Change> added)
{
    bool isTouched = false;
    bool mayEnd = false; // that one is alone
    for (const Change& change : added) {
        if (!isRosterKind(change.kind)) continue;
        isTouched = true;
        mayEnd = mayEnd || change.kind == "device" || change.kind == "invitation";
        m_rosterChanges.push_back(change);
        Running insert = m_statements.prepared("INSERT OR IGNORE INTO now_roster VALUES (?)");
        bindBytes(*insert, 1, change.record.bytes);
        insert->exec();
    }
    // As long as one is alone everything counts, whatever the roster says.
    if (!isTouched || (m_roster.isAlone() && !mayEnd)) return;
    giveWay(m_database, m_programme, m_rosterChanges);
    const Roster before = std::exchange(m_roster, readRoster());
    weighAgain(before);
}

// Records with changes that did not count and may count now. A settling also hangs on the members of others.
std::set<Uuid> Folding::asideUnder(const Roster& before)
{
    std::set<Uuid> records;
    std::map<StreamId, bool> isOther;
    Running query = m_statements.prepared("SELECT record, change, reason FROM now_aside");
    while (query->executeStep()) {
        const auto ref = parseRef(query->getColumn(1).getString());
        const StreamId stream = ref ? ref->stream : StreamId{};
        const auto [known, isNew] = isOther.try_emplace(stream);
        if (isNew) known->second = before.rightsOf(stream) != m_roster.rightsOf(stream);
        if (known->second || query->getColumn(2).getString() == "settling_not_yours")
            records.insert(uuidOf(query->getColumn(0)));
    }
    return records;
}

// Folds again whatever may stand otherwise under the new roster: all that did not count, and what may not
// count any more.
void Folding::weighAgain(const Roster& before)
{
    std::set<Uuid> records = asideUnder(before);
    const bool isAll = before.isAlone() != m_roster.isAlone();
    for (const StreamId& stream : streams())
        if (isAll || m_roster.mayCountLess(before, stream)) records.merge(recordsOf(stream));
    // Rulings are among them: what they are about follows when they come or go.
    const std::map<Uuid, RulingSeen> rulings = m_rulings;
    for (const Uuid& record : records)
        if (const auto changes = refold(record); !changes.empty() && changes.front().kind == "ruling")
            putRuling(changes);
    for (const auto& [record, ruling] : rulings)
        if (!m_rulings.contains(record)) refold(record);
    for (const auto& [record, ruling] : m_rulings) {
        const auto found = rulings.find(record);
        if (found == rulings.end() || found->second != ruling) refold(record);
    }
}

std::set<Uuid> Folding::recordsOf(const StreamId& stream)
{
    std::set<Uuid> records;
    for (const char* sql :
        {"SELECT DISTINCT record FROM sealed WHERE segment IN (SELECT segment.id FROM segment "
         "JOIN stream ON local=stream WHERE stream.id=?)",
            "SELECT DISTINCT record FROM change JOIN stream ON local=stream WHERE stream.id=?"}) {
        Running query = m_statements.prepared(sql);
        bindBytes(*query, 1, stream);
        while (query->executeStep()) records.insert(uuidOf(query->getColumn(0)));
    }
    return records;
}

// Hands over the bytes of every change that is used, the own tail last; ends early when `use` says so.
void Folding::eachBody(const std::function<bool(std::string_view)>& use)
{
    SQLite::Statement segments(m_database, "SELECT id FROM segment WHERE waits=0 ORDER BY id");
    while (segments.executeStep()) {
        const auto unpacked = m_lines.segment(segments.getColumn(0).getInt64());
        if (!unpacked || unpacked->isUnread) continue;
        for (const std::string_view line : unpacked->lines)
            if (line.starts_with('{') && !use(line)) return;
    }
    SQLite::Statement own(m_database, "SELECT body FROM change ORDER BY stream, seq");
    while (own.executeStep())
        if (!use(own.getColumn(0).getString())) return;
}

bool Folding::rebuild(const Progress& progress)
{
    m_statements.clear();
    forget();
    SQLite::Transaction transaction(m_database, SQLite::TransactionBehavior::IMMEDIATE);
    m_tables.create();
    eachBody([&](std::string_view body) {
        if (!mayBeRosterKind(body)) return true;
        const auto change = readChange(body);
        if (!change || !isRosterKind(change->kind)) return true;
        Running insert = m_statements.prepared("INSERT OR IGNORE INTO now_roster VALUES (?)");
        bindBytes(*insert, 1, change->record.bytes);
        insert->exec();
        return true;
    });
    load();
    if (!foldAll(progress)) {
        forget();
        return false;
    }
    m_tables.stamp();
    {
        Running stamp = m_statements.prepared("INSERT OR REPLACE INTO setting VALUES ('folded_for', ?)");
        stamp->bind(1, formatHex(m_own));
        stamp->exec();
    }
    transaction.commit();
    return true;
}

// One pass over the log. A record of one change is folded at once; those of several are gathered apart, so
// that memory does not grow with the log. What a ruling is about is folded again in the end.
bool Folding::foldAll(const Progress& progress)
{
    m_database.exec("CREATE TEMP TABLE IF NOT EXISTS several (record BLOB, body TEXT)");
    m_database.exec("DELETE FROM temp.several");
    const std::int64_t all =
        m_database.execAndGet("SELECT (SELECT count(*) FROM change) + (SELECT count(*) FROM sealed)")
            .getInt64();
    std::int64_t done = 0;
    bool isStopped = false;
    SQLite::Statement keep(m_database, "INSERT INTO temp.several VALUES (?,?)");
    SQLite::Statement count(m_database,
        "SELECT (SELECT count(*) FROM sealed WHERE record=?1) + (SELECT count(*) FROM change WHERE "
        "record=?1)");
    std::vector<Change> rulings;
    eachBody([&](std::string_view body) {
        if (++done % 1000 == 0 && progress && !progress(done, all)) isStopped = true;
        if (isStopped) return false;
        const auto change = readChange(body);
        if (!change) return true;
        bindBytes(count, 1, change->record.bytes);
        count.executeStep();
        const bool isOnly = count.getColumn(0).getInt64() == 1;
        count.reset();
        if (change->kind == "ruling") rulings.push_back(*change);
        if (isOnly && change->kind != "ruling") {
            put(std::span(&*change, 1), true);
            return true;
        }
        bindBytes(keep, 1, change->record.bytes);
        keep.bind(2, std::string(body));
        keep.exec();
        keep.reset();
        return true;
    });
    if (isStopped) return false;
    foldSeveral();
    for (const Change& ruling : rulings) {
        const std::vector<Change> changes = changesOf(ruling.record);
        putRuling(changes);
        if (const Uuid subject = subjectOf(changes, m_programme); !subject.isNil()) refold(subject);
    }
    return true;
}

void Folding::foldSeveral()
{
    SQLite::Statement query(m_database, "SELECT record, body FROM temp.several ORDER BY record");
    std::vector<Change> changes;
    while (query.executeStep()) {
        auto change = readChange(query.getColumn(1).getString());
        if (!change) continue;
        if (!changes.empty() && changes.front().record != change->record) {
            put(changes, true);
            changes.clear();
        }
        changes.push_back(std::move(*change));
    }
    if (!changes.empty()) put(changes, true);
    query.reset();
    m_database.exec("DELETE FROM temp.several");
}

} // namespace duskrow::store
