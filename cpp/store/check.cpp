// SPDX-License-Identifier: MIT
#include "store/check.h"

#include <SQLiteCpp/Backup.h>
#include <sqlite3.h>

#include "domain/log/change.h"
#include "store/sqlite_error.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

void readLog(SQLite::Database& database, CheckReport& report)
{
    SQLite::Statement log(
        database, "SELECT body, id, seq, record FROM change JOIN stream ON local=stream ORDER BY local, seq");
    while (log.executeStep()) {
        ++report.changes;
        const auto change = readChange(log.getColumn(0).getString());
        // The bytes say of themselves which change they are: a row that was altered no longer agrees.
        if (!change || uuidOf(log.getColumn(1)).bytes != change->ref.stream
            || log.getColumn(2).getInt64() != change->ref.seq || uuidOf(log.getColumn(3)) != change->record)
            ++report.unreadable;
    }
    report.gaps =
        database
            .execAndGet("SELECT coalesce(sum(missing), 0) FROM (SELECT max(seq) - count(*) AS missing "
                        "FROM change GROUP BY stream)")
            .getInt64();
}

bool refoldsEqual(SQLite::Database& copy)
{
    CurrentTables tables(copy);
    if (tables.isStale()) return true; // made by another version: opening makes them anew
    const std::string before = tables.dump();
    tables.rebuild({});
    return tables.dump() == before;
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
        readLog(copy, report);
        report.tablesEqual = refoldsEqual(copy);
        return report;
    });
}

} // namespace duskrow::store
