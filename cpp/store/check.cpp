// SPDX-License-Identifier: MIT
#include "store/check.h"

#include <SQLiteCpp/Backup.h>
#include <sqlite3.h>

#include "domain/log/change.h"
#include "store/folding.h"
#include "store/sqlite_error.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

// The bytes say of themselves which change they are: a row that was altered no longer agrees.
void readLine(std::string_view body, const StreamId& stream, std::int64_t seq, CheckReport& report)
{
    ++report.changes;
    const auto change = readChange(body);
    if (!change || change->ref != ChangeRef{stream, seq}) ++report.unreadable;
}

void readTail(SQLite::Database& database, CheckReport& report)
{
    SQLite::Statement log(
        database, "SELECT body, id, seq, record FROM change JOIN stream ON local=stream ORDER BY local, seq");
    while (log.executeStep()) {
        const std::string body = log.getColumn(0).getString();
        readLine(body, uuidOf(log.getColumn(1)).bytes, log.getColumn(2).getInt64(), report);
        const auto change = readChange(body);
        if (change && uuidOf(log.getColumn(3)) != change->record) ++report.unreadable;
    }
}

// Rows whose stream or segment is not there.
void countOrphans(SQLite::Database& database, CheckReport& report)
{
    report.unreadable += database.execAndGet("SELECT count(*) FROM pragma_foreign_key_check").getInt64();
}

void readSegments(SQLite::Database& database, CheckReport& report)
{
    SealedLines lines(database);
    SQLite::Statement query(
        database, "SELECT segment.id, stream.id, first, last FROM segment JOIN stream ON local=stream");
    while (query.executeStep()) {
        const std::int64_t first = query.getColumn(2).getInt64();
        const std::int64_t last = query.getColumn(3).getInt64();
        const auto unpacked = lines.segment(query.getColumn(0).getInt64());
        if (!unpacked || static_cast<std::int64_t>(unpacked->lines.size()) != last - first + 1) {
            report.changes += last - first + 1;
            report.unreadable += last - first + 1;
            continue;
        }
        for (std::size_t i = 0; i < unpacked->lines.size(); ++i)
            if (unpacked->lines[i].starts_with('{'))
                readLine(unpacked->lines[i], uuidOf(query.getColumn(1)).bytes,
                    first + static_cast<std::int64_t>(i), report);
    }
}

// Numbers that are missing in a stream's rows, before the first and between them. What is missing before a
// segment that waits is waited for, and shown so.
void countGaps(SQLite::Database& database, CheckReport& report)
{
    report.gaps =
        database
            .execAndGet("SELECT coalesce(sum(max(0, top - coalesce(sealed, 0) - here)), 0) FROM (SELECT "
                        "max(seq) AS top, count(*) AS here, (SELECT max(last) FROM segment WHERE "
                        "segment.stream=change.stream) AS sealed FROM change GROUP BY stream)")
            .getInt64();
}

bool refoldsEqual(SQLite::Database& copy, const Uuid& programme, const StreamId& own)
{
    Folding folding(copy, programme, own);
    if (folding.isStale()) return true; // made by another version: opening makes them anew
    const std::string before = folding.tables().dump();
    folding.rebuild({});
    return folding.tables().dump() == before;
}

} // namespace

Result<CheckReport> checkStore(const std::string& path)
{
    const auto kind = inspectFile(path);
    if (!kind) return kind.error();
    if (*kind == FileKind::Absent) return Error{ErrorCode::StoreMissing, {path}};
    auto database = openReader(path, {});
    if (!database) return database.error();
    return guarded<CheckReport>(path, [&]() -> Result<CheckReport> {
        CheckReport report;
        report.integrity = (*database)->execAndGet("PRAGMA integrity_check").getString();
        SQLite::Database copy(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        SQLite::Backup backup(copy, **database);
        if (backup.executeStep() != SQLITE_DONE) return Error{ErrorCode::StoreBusy, {path}};
        if (const auto migrated = migrate(copy, path); !migrated) return migrated.error();
        readTail(copy, report);
        readSegments(copy, report);
        countOrphans(copy, report);
        countGaps(copy, report);
        SQLite::Statement stream(copy, "SELECT value FROM setting WHERE key='own_stream'");
        StreamId own{};
        if (stream.executeStep() && !parseHex(stream.getColumn(0).getString(), own)) own = {};
        stream.reset();
        SQLite::Statement programme(copy, "SELECT value FROM setting WHERE key='programme'");
        const bool isNamed = programme.executeStep();
        const auto id = isNamed ? parseUuid(programme.getColumn(0).getString()) : std::nullopt;
        programme.reset();
        report.tablesEqual = refoldsEqual(copy, id.value_or(Uuid{}), own);
        return report;
    });
}

} // namespace duskrow::store
