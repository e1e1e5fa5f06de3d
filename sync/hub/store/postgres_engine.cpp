// SPDX-License-Identifier: MIT
#include <algorithm>
#include <chrono>
#include <condition_variable>
#include <deque>
#include <iterator>
#include <map>
#include <mutex>
#include <pqxx/pqxx>
#include <thread>

#include "domain/base/uuid.h"
#include "hub_migrations.gen.h"
#include "sync/hub/store/engine.h"

// The only file that knows libpqxx; its exceptions end here.
namespace duskrow::hub {

using domain::Done;
using domain::Error;
using domain::ErrorCode;
using domain::Result;

namespace {

constexpr std::int64_t newestVersion = std::size(postgresMigrations);
constexpr int mostTries = 12;
constexpr std::size_t mostTogether = 64; // writes in one commit
constexpr std::size_t mostKept = 16; // connections at rest
constexpr pqxx::oid typeOfBytes = 17;
constexpr pqxx::oid typeOfText = 25;

// Values travel as text; the server reads them as what the column is.
std::string written(const Cell& cell)
{
    if (const auto* number = std::get_if<std::int64_t>(&cell)) return std::to_string(*number);
    if (const auto* text = std::get_if<std::string>(&cell)) return *text;
    const std::string& bytes = std::get<Blob>(cell).bytes;
    return "\\x" + domain::formatHex({reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size()});
}

Cell cellOf(const pqxx::field& field)
{
    const std::string_view text(field.c_str(), field.size());
    if (field.type() == typeOfText) return std::string(text);
    if (field.type() != typeOfBytes) return field.as<std::int64_t>(0);
    Blob blob;
    if (text.size() < 2) return blob;
    blob.bytes.resize((text.size() - 2) / 2);
    domain::parseHex(text.substr(2), {reinterpret_cast<std::uint8_t*>(blob.bytes.data()), blob.bytes.size()});
    return blob;
}

class PostgresSession final : public Session {
public:
    explicit PostgresSession(pqxx::transaction_base& transaction) : m_transaction(transaction) { }

    // Failures leave through the transaction's end, where they can be tried again.
    Rows run(std::string_view sql, const std::vector<Cell>& values = {}) override
    {
        std::vector<std::string> texts;
        for (const Cell& value : values) texts.push_back(written(value));
        const pqxx::result found = m_transaction.exec_params(
            std::string(sql), pqxx::prepare::make_dynamic_params(texts.begin(), texts.end()));
        Rows rows;
        for (const pqxx::row& row : found) {
            std::vector<Cell> cells;
            for (const pqxx::field& field : row) cells.push_back(cellOf(field));
            rows.emplace_back(std::move(cells));
        }
        return rows;
    }
    [[nodiscard]] std::string_view forUpdate() const override { return " FOR UPDATE"; }

private:
    pqxx::transaction_base& m_transaction;
};

// What a failure means: whether another try may help, and what to say when none did.
struct Failure {
    bool mayPass = false;
    bool isConnectionLost = false;
    Error error;
};

Failure failureOf(const std::exception& thrown, const std::string& where)
{
    const auto as = [&](ErrorCode code) { return Error{code, {where}, thrown.what()}; };
    if (dynamic_cast<const pqxx::broken_connection*>(&thrown) != nullptr)
        return {true, true, as(ErrorCode::StoreUnreachable)};
    if (const auto* sql = dynamic_cast<const pqxx::sql_error*>(&thrown)) {
        const std::string& state = sql->sqlstate();
        // Serialisation, deadlock, and two that found the same row or table missing at once.
        if (state == "40001" || state == "40P01" || state == "23505" || state == "42P07")
            return {true, false, as(ErrorCode::StoreBusy)};
        if (state.starts_with("53") && state != "53100") return {true, true, as(ErrorCode::StoreBusy)};
        if (state.starts_with("57")) return {true, true, as(ErrorCode::StoreUnreachable)};
        if (state == "53100") return {false, false, as(ErrorCode::DiskFull)};
        return {false, false, as(ErrorCode::StoreDamaged)};
    }
    return {false, true, as(ErrorCode::StoreUnreachable)};
}

class PostgresEngine final : public Engine {
public:
    explicit PostgresEngine(std::string url) : m_url(std::move(url)), m_where(withoutPassword(m_url)) { }

    Result<Done> write(const Work& work, const std::string& group) override
    {
        if (group.empty()) return tried<pqxx::read_committed>({&work});
        return writeTogether(work, group);
    }
    Result<Done> read(const Work& work) override { return tried<pqxx::repeatable_read>({&work}); }

    Result<Done> migrate()
    {
        return write(
            [](Session& session) {
                session.run("CREATE TABLE IF NOT EXISTS migration (number BIGINT PRIMARY KEY)");
                const Rows newest = session.run("SELECT coalesce(max(number), 0) FROM migration");
                for (std::int64_t next = newest.front().number(0); next < newestVersion; ++next) {
                    session.run("INSERT INTO migration VALUES ($1)", {next + 1});
                    for (const std::string& statement : statementsOf(postgresMigrations[next]))
                        session.run(statement);
                }
            },
            {});
    }

    Result<std::int64_t> version()
    {
        std::int64_t number = 0;
        const auto done = read([&](Session& session) {
            number = session.run("SELECT coalesce(max(number), 0) FROM migration").front().number(0);
        });
        if (!done) return done.error();
        return number;
    }

private:
    static std::string withoutPassword(const std::string& url)
    {
        const auto begin = url.find("://");
        const auto at = url.find('@');
        if (begin == std::string::npos || at == std::string::npos) return url;
        return url.substr(0, begin + 3) + url.substr(at + 1);
    }

    // exec_params takes one statement at a time. No text in the migrations holds a semicolon.
    static std::vector<std::string> statementsOf(std::string_view sql)
    {
        std::vector<std::string> statements;
        std::string one;
        for (std::size_t at = 0; at < sql.size(); ++at) {
            if (sql.substr(at, 2) == "--") {
                at = std::min(sql.find('\n', at), sql.size());
                one += '\n';
                continue;
            }
            if (sql[at] != ';') {
                one += sql[at];
                continue;
            }
            statements.push_back(std::move(one));
            one.clear();
        }
        return statements;
    }

    // While one of a group commits, the next gather; then one of them commits for all.
    struct Waiting {
        const Work* work = nullptr;
        std::optional<Result<Done>> result;
    };
    struct Group {
        std::deque<std::shared_ptr<Waiting>> waiting;
        std::condition_variable changed;
        bool isCommitting = false;
        int users = 0;
    };

    Result<Done> writeTogether(const Work& work, const std::string& name)
    {
        std::unique_lock lock(m_mutex);
        Group& group = m_groups[name];
        ++group.users;
        const auto own = std::make_shared<Waiting>();
        own->work = &work;
        group.waiting.push_back(own);
        while (!own->result) {
            group.changed.wait(lock, [&] { return own->result || !group.isCommitting; });
            if (own->result) break;
            std::vector<std::shared_ptr<Waiting>> batch;
            while (!group.waiting.empty() && batch.size() < mostTogether) {
                batch.push_back(std::move(group.waiting.front()));
                group.waiting.pop_front();
            }
            group.isCommitting = true;
            lock.unlock();
            const auto results = commit(batch);
            lock.lock();
            for (std::size_t i = 0; i < batch.size(); ++i) batch[i]->result = results[i];
            group.isCommitting = false;
            group.changed.notify_all();
        }
        const Result<Done> result = *own->result;
        if (--group.users == 0) m_groups.erase(name);
        return result;
    }

    std::vector<Result<Done>> commit(const std::vector<std::shared_ptr<Waiting>>& batch)
    {
        std::vector<const Work*> works;
        for (const auto& waiting : batch) works.push_back(waiting->work);
        const auto done = tried<pqxx::read_committed>(works);
        if (done || batch.size() == 1) return std::vector<Result<Done>>(batch.size(), done);
        // One that fails must not take the others with it.
        std::vector<Result<Done>> results;
        for (const Work* work : works) results.push_back(tried<pqxx::read_committed>({work}));
        return results;
    }

    template <pqxx::isolation_level isolation>
    Result<Done> tried(const std::vector<const Work*>& works)
    {
        Error last{ErrorCode::StoreUnreachable, {m_where}};
        for (int round = 0; round < mostTries; ++round) {
            if (round > 0) std::this_thread::sleep_for(std::chrono::milliseconds(round * round * 3));
            auto connection = take();
            try {
                if (!connection) connection = std::make_unique<pqxx::connection>(m_url);
                pqxx::transaction<isolation> transaction(*connection);
                PostgresSession session(transaction);
                for (const Work* work : works) (*work)(session);
                transaction.commit();
                giveBack(std::move(connection));
                return Done{};
            } catch (const std::exception& thrown) {
                Failure failure = failureOf(thrown, m_where);
                if (!failure.isConnectionLost) giveBack(std::move(connection));
                if (!failure.mayPass) return failure.error;
                last = std::move(failure.error);
            }
        }
        return last;
    }

    std::unique_ptr<pqxx::connection> take()
    {
        const std::lock_guard guard(m_mutex);
        if (m_atRest.empty()) return nullptr;
        auto taken = std::move(m_atRest.back());
        m_atRest.pop_back();
        return taken;
    }

    void giveBack(std::unique_ptr<pqxx::connection> connection)
    {
        const std::lock_guard guard(m_mutex);
        if (connection && m_atRest.size() < mostKept) m_atRest.push_back(std::move(connection));
    }

    std::string m_url;
    std::string m_where;
    std::mutex m_mutex;
    std::vector<std::unique_ptr<pqxx::connection>> m_atRest;
    std::map<std::string, Group> m_groups; // those that somebody waits in
};

} // namespace

Result<std::unique_ptr<Engine>> openPostgres(const std::string& url)
{
    auto engine = std::make_unique<PostgresEngine>(url);
    const auto migrated = engine->migrate();
    if (!migrated) return migrated.error();
    const auto version = engine->version();
    if (!version) return version.error();
    if (*version > newestVersion) return Error{ErrorCode::StoreNewer, {"PostgreSQL"}};
    return std::unique_ptr<Engine>(std::move(engine));
}

} // namespace duskrow::hub
