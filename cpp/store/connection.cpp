// SPDX-License-Identifier: MIT
#include "store/connection.h"

#include <SQLiteCpp/Transaction.h>
#include <array>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sqlite3.h>
#include <string_view>

#include "migrations.gen.h"
#include "store/sqlite_error.h"

namespace duskrow::store {

using domain::Done;
using domain::Error;
using domain::ErrorCode;
using domain::Result;

namespace {

constexpr std::uint32_t applicationId = 0x4455534B; // "DUSK"
constexpr int newestVersion = static_cast<int>(std::size(migrations));
// A connection is used by one thread at a time, so SQLite need not guard each call.
constexpr int ofOneThread = SQLITE_OPEN_READWRITE | SQLITE_OPEN_NOMUTEX;

std::uint32_t bigEndian(const std::array<char, 100>& header, std::size_t at)
{
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < 4; ++i) number = (number << 8) | static_cast<std::uint8_t>(header[at + i]);
    return number;
}

// Whether SQLite's rollback journal says that the file was empty before: the first page was under way when
// the power went, and opening will take it back.
bool isCreationCutShort(const std::string& path)
{
    constexpr std::string_view magic("\xD9\xD5\x05\xF9\x20\xA1\x63\xD7", 8);
    std::array<char, 100> header{};
    std::ifstream file(path + "-journal", std::ios::binary);
    return file.read(header.data(), header.size()) && std::string_view(header.data(), 8) == magic
        && bigEndian(header, 16) == 0;
}

// Whether the header counts more pages than the file has. While a log stands beside it, that may hold them.
bool isCutShort(const std::array<char, 100>& header, std::uintmax_t size, const std::string& path)
{
    const std::uint32_t written = bigEndian(header, 16) >> 16;
    const std::uintmax_t pageSize = written == 1 ? 65536 : written;
    const bool countHolds = bigEndian(header, 24) == bigEndian(header, 92);
    return countHolds && bigEndian(header, 28) * pageSize > size && !hasContent(path + "-wal")
        && !hasContent(path + "-journal");
}

} // namespace

bool hasContent(const std::string& path)
{
    std::error_code failure;
    const auto size = std::filesystem::file_size(path, failure);
    return !failure && size > 0;
}

Result<FileKind> inspectFile(const std::string& path)
{
    std::error_code failure;
    const auto size = std::filesystem::file_size(path, failure);
    if (failure && failure != std::errc::no_such_file_or_directory)
        return Error{ErrorCode::FileUnreadable, {path}, failure.message()};
    if (isCreationCutShort(path)) return FileKind::Absent;
    if (failure || size == 0) {
        // A kill during creation leaves nothing or an empty file. SQLite would delete a log without its
        // store, and that log may hold what is nowhere else.
        if (hasContent(path + "-wal"))
            return Error{ErrorCode::StoreDamaged, {path}, "a log without its store"};
        return FileKind::Absent;
    }
    std::array<char, 100> header{};
    std::ifstream file(path, std::ios::binary);
    if (!file.is_open()) return Error{ErrorCode::FileUnreadable, {path}};
    if (!file.read(header.data(), header.size())) {
        if (size >= header.size()) return Error{ErrorCode::FileUnreadable, {path}};
        return Error{ErrorCode::StoreNotOurs, {path}};
    }
    if (std::memcmp(header.data(), "SQLite format 3", 16) != 0) return Error{ErrorCode::StoreNotOurs, {path}};
    const auto version = static_cast<std::int32_t>(bigEndian(header, 60));
    const std::uint32_t owner = bigEndian(header, 68);
    // One page holds no table yet: a file whose creation was cut short. Anything else unnamed is not ours.
    const bool isUnfinished = owner == 0 && version == 0 && bigEndian(header, 28) == 1;
    if (owner != applicationId && !isUnfinished) return Error{ErrorCode::StoreNotOurs, {path}};
    if (version > newestVersion) return Error{ErrorCode::StoreNewer, {path}};
    if (isCutShort(header, size, path)) return Error{ErrorCode::StoreDamaged, {path}, "cut short"};
    return version == newestVersion ? FileKind::Current : FileKind::Older;
}

Result<std::unique_ptr<SQLite::Database>> openWriter(const std::string& path, const std::string& vfs)
{
    using Opened = Result<std::unique_ptr<SQLite::Database>>;
    return guarded<std::unique_ptr<SQLite::Database>>(path, [&]() -> Opened {
        auto database =
            std::make_unique<SQLite::Database>(path, ofOneThread | SQLite::OPEN_CREATE, 5000, vfs);
        // SQLite opens what it may not write for reading, and would say so only when something is kept.
        if (sqlite3_db_readonly(database->getHandle(), "main") != 0)
            return Error{ErrorCode::StoreReadOnly, {path}};
        // A fault-injecting VFS has no shared memory; exclusive locking lets WAL work without it.
        if (!vfs.empty()) database->exec("PRAGMA locking_mode=EXCLUSIVE");
        // Sealing gives pages back. Of a file that is there already it would write the header.
        if (database->execAndGet("PRAGMA page_count").getInt64() == 0)
            database->exec("PRAGMA auto_vacuum=INCREMENTAL");
        database->exec("PRAGMA journal_mode=WAL");
        database->exec("PRAGMA journal_size_limit=1048576");
        database->exec("PRAGMA synchronous=FULL");
        // Checking every row would cost a third of sealing; check() looks whether all are there.
        database->exec("PRAGMA foreign_keys=OFF");
        database->exec("PRAGMA cache_size=-8000"); // KiB: the pages that sealing a season of changes touches
        database->exec("PRAGMA trusted_schema=OFF");
        database->exec("PRAGMA cell_size_check=ON");
        database->exec("PRAGMA temp_store=MEMORY");
        database->exec("PRAGMA fullfsync=ON");
        return database;
    });
}

Result<std::unique_ptr<SQLite::Database>> openReader(const std::string& path, const std::string& vfs)
{
    return guarded<std::unique_ptr<SQLite::Database>>(path, [&] {
        // Not OPEN_READONLY: a reader of a WAL file may have to create the shared memory beside it.
        auto database = std::make_unique<SQLite::Database>(path, ofOneThread, 5000, vfs);
        leaveAsItIs(*database);
        database->exec("PRAGMA query_only=ON");
        database->exec("PRAGMA wal_autocheckpoint=0");
        database->exec("PRAGMA trusted_schema=OFF");
        database->exec("PRAGMA cell_size_check=ON");
        return database;
    });
}

void emptyLog(SQLite::Database& database, const std::string& path)
{
    static_cast<void>(guarded<Done>(path, [&] {
        database.setBusyTimeout(0);
        static_cast<void>(database.execAndGet("PRAGMA wal_checkpoint(TRUNCATE)"));
        return Done{};
    }));
}

void leaveAsItIs(SQLite::Database& database)
{
    sqlite3_db_config(database.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
}

namespace {

// inspectFile sees the header on the disk only; the newest header may still stand in the log beside it.
Result<int> versionOf(SQLite::Database& database, const std::string& path)
{
    const int version = database.execAndGet("PRAGMA user_version").getInt();
    const auto owner = static_cast<std::uint32_t>(database.execAndGet("PRAGMA application_id").getInt());
    const bool isEmpty = database.execAndGet("SELECT count(*) FROM sqlite_schema").getInt() == 0;
    if (owner != applicationId && !(owner == 0 && isEmpty)) return Error{ErrorCode::StoreNotOurs, {path}};
    if (version > newestVersion) return Error{ErrorCode::StoreNewer, {path}};
    if (version < 0 || (version == 0) != isEmpty)
        return Error{ErrorCode::StoreDamaged, {path}, "version " + std::to_string(version)};
    return version;
}

} // namespace

Result<Done> migrate(SQLite::Database& database, const std::string& path)
{
    return guarded<Done>(path, [&]() -> Result<Done> {
        const auto version = versionOf(database, path);
        if (!version) return version.error();
        if (*version == newestVersion) return Done{};
        for (int next = *version; next < newestVersion; ++next) {
            SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
            database.exec(migrations[next]);
            database.exec("PRAGMA application_id=" + std::to_string(applicationId));
            database.exec("PRAGMA user_version=" + std::to_string(next + 1));
            transaction.commit();
        }
        // The header on disk must tell the version to inspectFile, which never opens the log beside it.
        database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
        return Done{};
    });
}

} // namespace duskrow::store
