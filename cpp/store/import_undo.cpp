// SPDX-License-Identifier: MIT
#include "store/import_undo.h"

#include <algorithm>
#include <array>
#include <set>

#include "domain/import/import_plan.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

constexpr std::size_t inOneCommit = 2'500;

struct Made {
    std::string kind;
    Uuid site;
    std::string season; // of a pest in use
};

// What must be gone before a record of a kind may go: kind, and the query for its dependents.
struct Dependents {
    std::string_view kind;
    const char* sql;
};
constexpr std::array dependents{
    Dependents{"visit", "SELECT id FROM now_sample WHERE visit=? AND withdrawn IS NULL"},
    Dependents{"trap", "SELECT id FROM now_visit WHERE trap=? AND withdrawn IS NULL"},
    Dependents{"trap", "SELECT id FROM now_service WHERE trap=? AND withdrawn IS NULL"},
    Dependents{"trap", "SELECT id FROM now_sample WHERE trap=? AND withdrawn IS NULL"},
    Dependents{"trap", "SELECT id FROM now_loan WHERE trap=? AND withdrawn IS NULL"},
    Dependents{"site", "SELECT id FROM now_trap WHERE site=? AND withdrawn IS NULL"},
    Dependents{"site", "SELECT id FROM now_walk WHERE site=? AND withdrawn IS NULL"},
    Dependents{"district", "SELECT id FROM now_site WHERE district=? AND withdrawn IS NULL"},
    Dependents{"protocol_use", "SELECT id FROM now_trap WHERE season=? AND withdrawn IS NULL"},
    Dependents{"season", "SELECT id FROM now_site WHERE season=? AND withdrawn IS NULL"},
    Dependents{"season", "SELECT id FROM now_trap WHERE season=? AND withdrawn IS NULL"},
    Dependents{"station", "SELECT id FROM now_temperature WHERE station=? AND withdrawn IS NULL"},
    Dependents{"season", "SELECT id FROM now_walk WHERE season=? AND withdrawn IS NULL"},
};
constexpr std::array<std::string_view, 8> order{
    "temperature", "station", "visit", "trap", "site", "district", "protocol_use", "season"};

class Undoing {
public:
    Undoing(Reader& reader, const ImportNoted& import, std::vector<ImportRange> ranges)
        : m_reader(reader), m_reason(std::string(undoneReason) + import.file), m_ranges(std::move(ranges))
    {
    }

    Result<ImportUndo> plan()
    {
        for (const ImportRange& range : m_ranges)
            if (const auto read = gather(range); !read) return read.error();
        for (const std::string_view kind : order)
            for (const auto& [record, made] : m_made)
                if (made.kind == kind)
                    if (const auto weighed = weigh(record, made); !weighed) return weighed.error();
        return std::move(m_undo);
    }

private:
    [[nodiscard]] bool isOurs(const ChangeRef& ref) const
    {
        return std::any_of(m_ranges.begin(), m_ranges.end(), [&](const ImportRange& range) {
            return range.stream == ref.stream && ref.seq >= range.first && ref.seq <= range.last;
        });
    }

    void note(std::string_view body)
    {
        const auto change = readChange(body);
        if (!change || !isOurs(change->ref)) return;
        Made& made = m_made[change->record];
        made.kind = change->kind;
        made.site = change->site;
        const auto season = change->fields.find("season");
        if (season == change->fields.end()) return;
        if (const auto* id = std::get_if<std::string>(&season->second.value)) made.season = *id;
    }

    // The changes of a range lie in rows, or in segments once they were handed over.
    Result<Done> gather(const ImportRange& range)
    {
        const RawJson stream{
            std::string(reinterpret_cast<const char*>(range.stream.data()), range.stream.size())};
        const auto own = m_reader.eachRow("SELECT body FROM change WHERE stream=(SELECT local FROM stream "
                                          "WHERE id=?) AND seq BETWEEN ? AND ?",
            {stream, range.first, range.last},
            [&](SQLite::Statement& row) { note(row.getColumn(0).getString()); });
        if (!own) return own.error();
        std::vector<std::int64_t> segments;
        const auto found = m_reader.eachRow("SELECT id FROM segment WHERE stream=(SELECT local FROM stream "
                                            "WHERE id=?) AND last>=? AND first<=?",
            {stream, range.first, range.last},
            [&](SQLite::Statement& row) { segments.push_back(row.getColumn(0).getInt64()); });
        if (!found) return found.error();
        return guarded<Done>(m_reader.path(), [&] {
            for (const std::int64_t id : segments)
                if (const auto unpacked = m_reader.lines().segment(id))
                    for (const std::string_view line : unpacked->lines) note(line);
            return Done{};
        });
    }

    Result<Done> weigh(const Uuid& record, const Made& made)
    {
        const auto changes = m_reader.changesOf(record);
        if (!changes) return changes.error();
        if (changes->empty()) return Done{};
        const Folded folded = fold(*changes);
        const auto withdrawn = folded.values.find("withdrawn");
        if (withdrawn != folded.values.end() && !isEmpty(withdrawn->second)) return Done{};
        const bool isChanged = std::any_of(
            changes->begin(), changes->end(), [&](const Change& change) { return !isOurs(change.ref); });
        const auto inUse = isChanged ? Result<bool>(false) : isInUse(record, made);
        if (!inUse) return inUse.error();
        if (isChanged || *inUse) {
            m_undo.staying.push_back(
                {made.kind, record, isChanged ? StayReason::Changed : StayReason::InUse});
            return Done{};
        }
        m_gone.insert(record);
        ++m_undo.withdrawn[made.kind];
        m_undo.edits.push_back({made.kind, record, made.site, {{"withdrawn", Value{m_reason}}}});
        return Done{};
    }

    Result<bool> isInUse(const Uuid& record, const Made& made)
    {
        bool inUse = false;
        for (const Dependents& one : dependents) {
            if (one.kind != made.kind) continue;
            const std::string of = made.kind == "protocol_use" ? made.season : formatUuid(record);
            const auto read = m_reader.eachRow(one.sql, {of},
                [&](SQLite::Statement& row) { inUse = inUse || !m_gone.contains(uuidOf(row.getColumn(0))); });
            if (!read) return read.error();
        }
        return inUse;
    }

    Reader& m_reader;
    std::string m_reason;
    std::vector<ImportRange> m_ranges;
    std::map<Uuid, Made> m_made;
    std::set<Uuid> m_gone;
    ImportUndo m_undo;
};

} // namespace

Result<ImportUndo> planUndo(Reader& reader, const ImportNoted& import)
{
    auto ranges = rangesOfImport(reader, import.id);
    if (!ranges) return ranges.error();
    if (ranges->empty()) return Error{ErrorCode::NothingToUndo, {import.file}};
    return Undoing(reader, import, std::move(*ranges)).plan();
}

Result<ImportRun> runUndo(Store& store, const ImportUndo& undo, const ImportNoted& import, const ImportBy& by,
    const Progress& progress)
{
    ImportRun run;
    while (run.kept < undo.edits.size()) {
        const std::size_t end = std::min(run.kept + inOneCommit, undo.edits.size());
        const auto from = undo.edits.begin() + static_cast<std::ptrdiff_t>(run.kept);
        const auto to = undo.edits.begin() + static_cast<std::ptrdiff_t>(end);
        Batch batch{by.author, by.at, by.offset, {from, to}, {}, import.id};
        if (const auto kept = store.keepNow(std::move(batch)); !kept) return kept.error();
        run.kept = end;
        if (progress
            && !progress(static_cast<std::int64_t>(end), static_cast<std::int64_t>(undo.edits.size()))) {
            run.isStopped = end < undo.edits.size();
            break;
        }
    }
    return run;
}

} // namespace duskrow::store
