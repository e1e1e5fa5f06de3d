// SPDX-License-Identifier: MIT
#include <SQLiteCpp/Transaction.h>
#include <condition_variable>
#include <deque>
#include <filesystem>
#include <future>
#include <iterator>
#include <mutex>
#include <sqlite3.h>
#include <thread>

#include "hub_migrations.gen.h"
#include "store/connection.h"
#include "store/sqlite_error.h"
#include "sync/hub/store/sqlite_session.h"

namespace duskrow::hub {

using domain::Done;
using domain::Error;
using domain::ErrorCode;
using domain::Result;

namespace {

constexpr int applicationId = 0x44555348; // "DUSH"
constexpr int newestVersion = static_cast<int>(std::size(sqliteMigrations));
constexpr std::size_t mostTogether = 64; // writes in one commit
constexpr std::size_t mostReaders = 8; // connections kept open

struct Waiting {
    const Work* work = nullptr;
    std::promise<Result<Done>> answer;
};

Result<Done> migrate(SQLite::Database& database, const std::string& path)
{
    return store::guarded<Done>(path, [&]() -> Result<Done> {
        SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
        const int version = database.execAndGet("PRAGMA user_version").getInt();
        const int owner = database.execAndGet("PRAGMA application_id").getInt();
        const bool isEmpty = database.execAndGet("SELECT count(*) FROM sqlite_schema").getInt() == 0;
        if (owner != applicationId && !(owner == 0 && isEmpty)) return Error{ErrorCode::StoreNotOurs, {path}};
        if (version > newestVersion) return Error{ErrorCode::StoreNewer, {path}};
        for (int next = version; next < newestVersion; ++next) database.exec(sqliteMigrations[next]);
        database.exec("PRAGMA application_id=" + std::to_string(applicationId));
        database.exec("PRAGMA user_version=" + std::to_string(newestVersion));
        transaction.commit();
        return Done{};
    });
}

Result<std::unique_ptr<SQLite::Database>> takeLock(const std::string& path)
{
    return store::guarded<std::unique_ptr<SQLite::Database>>(path, [&] {
        auto lock = std::make_unique<SQLite::Database>(
            path + ".lock", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 0);
        lock->exec("PRAGMA journal_mode=MEMORY");
        lock->exec("BEGIN EXCLUSIVE");
        return lock;
    });
}

class SqliteEngine final : public Engine {
public:
    SqliteEngine(std::unique_ptr<SQLite::Database> lock, SqliteConnection writer)
        : m_lock(std::move(lock)), m_path(writer.path), m_writer(std::move(writer)),
          m_thread([this] { writeAll(); })
    {
    }
    ~SqliteEngine() override
    {
        {
            const std::lock_guard guard(m_mutex);
            m_isEnding = true;
        }
        m_wake.notify_all();
        m_thread.join();
        m_readers.clear();
        m_writer.statements.clear();
    }

    // There is one writer: all works are one group.
    Result<Done> write(const Work& work, const std::string& /*group*/) override
    {
        auto waiting = std::make_shared<Waiting>();
        waiting->work = &work;
        auto answer = waiting->answer.get_future();
        {
            const std::lock_guard guard(m_mutex);
            m_waiting.push_back(std::move(waiting));
        }
        m_wake.notify_one();
        return answer.get();
    }

    Result<Done> read(const Work& work) override
    {
        auto connection = takeReader();
        if (!connection) return connection.error();
        const auto done = inTransaction(**connection, "BEGIN", {&work});
        const std::lock_guard guard(m_mutex);
        if (done && m_readers.size() < mostReaders) m_readers.push_back(std::move(*connection));
        return done;
    }

private:
    Result<std::unique_ptr<SqliteConnection>> takeReader()
    {
        {
            const std::lock_guard guard(m_mutex);
            if (!m_readers.empty()) {
                auto taken = std::move(m_readers.back());
                m_readers.pop_back();
                return taken;
            }
        }
        auto opened = store::openReader(m_path, "");
        if (!opened) return opened.error();
        auto connection = std::make_unique<SqliteConnection>();
        connection->path = m_path;
        connection->database = std::move(*opened);
        return connection;
    }

    static Result<Done> inTransaction(
        SqliteConnection& connection, const char* begin, const std::vector<const Work*>& works)
    {
        const auto done = store::guarded<Done>(connection.path, [&]() -> Result<Done> {
            connection.database->exec(begin);
            for (const Work* work : works) {
                SqliteSession session(connection);
                (*work)(session);
                if (session.isFailed()) return *session.error();
            }
            connection.database->exec("COMMIT");
            return Done{};
        });
        if (!done && sqlite3_get_autocommit(connection.database->getHandle()) == 0)
            connection.database->tryExec("ROLLBACK");
        return done;
    }

    // While one commit goes to the disk, the next writes gather.
    void writeAll()
    {
        for (;;) {
            std::vector<std::shared_ptr<Waiting>> batch;
            {
                std::unique_lock guard(m_mutex);
                m_wake.wait(guard, [&] { return m_isEnding || !m_waiting.empty(); });
                if (m_waiting.empty()) return;
                while (!m_waiting.empty() && batch.size() < mostTogether) {
                    batch.push_back(std::move(m_waiting.front()));
                    m_waiting.pop_front();
                }
            }
            commit(batch);
        }
    }

    void commit(const std::vector<std::shared_ptr<Waiting>>& batch)
    {
        std::vector<const Work*> works;
        for (const auto& waiting : batch) works.push_back(waiting->work);
        const auto done = inTransaction(m_writer, "BEGIN IMMEDIATE", works);
        if (done || batch.size() == 1) {
            for (const auto& waiting : batch) waiting->answer.set_value(done);
            return;
        }
        // One that fails must not take the others with it.
        for (const auto& waiting : batch)
            waiting->answer.set_value(inTransaction(m_writer, "BEGIN IMMEDIATE", {waiting->work}));
    }

    std::unique_ptr<SQLite::Database> m_lock;
    std::string m_path;
    SqliteConnection m_writer; // the writing thread's
    std::mutex m_mutex;
    std::condition_variable m_wake;
    std::deque<std::shared_ptr<Waiting>> m_waiting;
    std::vector<std::unique_ptr<SqliteConnection>> m_readers; // those at rest
    bool m_isEnding = false;
    std::thread m_thread; // last: it uses all of the above
};

} // namespace

Result<std::unique_ptr<Engine>> openSqlite(const std::string& path, Opening opening)
{
    auto lock = takeLock(path);
    if (!lock && (opening == Opening::Serve || lock.error().code != ErrorCode::StoreBusy))
        return lock.error();
    SqliteConnection writer;
    writer.path = path;
    auto database = store::openWriter(path, "");
    if (!database) return database.error();
    writer.database = std::move(*database);
    if (!lock) {
        // Only one connection may bring the log into the file: the one of the hub that serves.
        writer.database->tryExec("PRAGMA wal_autocheckpoint=0");
        store::leaveAsItIs(*writer.database);
    }
    const auto migrated = migrate(*writer.database, path);
    if (!migrated) return migrated.error();
    auto held = lock ? std::move(*lock) : nullptr;
    return std::unique_ptr<Engine>(std::make_unique<SqliteEngine>(std::move(held), std::move(writer)));
}

} // namespace duskrow::hub
