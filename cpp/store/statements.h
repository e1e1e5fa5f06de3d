// SPDX-License-Identifier: MIT
#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <map>
#include <string>
#include <string_view>

namespace duskrow::store {

// One use of a prepared statement. When it goes out of scope the statement is reset, also after an exception,
// so that no cursor holds the log open and the next use does not meet the old failure.
class Running {
public:
    explicit Running(SQLite::Statement& statement) : m_statement(&statement) { m_statement->clearBindings(); }
    ~Running() { m_statement->tryReset(); }
    Running(const Running&) = delete;
    Running& operator=(const Running&) = delete;

    SQLite::Statement& operator*() { return *m_statement; }
    SQLite::Statement* operator->() { return m_statement; }

private:
    SQLite::Statement* m_statement;
};

// They are copied.
inline void bindBytes(SQLite::Statement& statement, int at, const auto& bytes)
{
    statement.bind(at, bytes.data(), static_cast<int>(bytes.size()));
}

// The prepared statements of one connection, by their SQL.
class Statements {
public:
    explicit Statements(SQLite::Database& database) : m_database(database) { }

    Running prepared(std::string_view sql)
    {
        auto held = m_held.find(sql);
        if (held == m_held.end())
            held = m_held.try_emplace(std::string(sql), m_database, std::string(sql)).first;
        return Running(held->second);
    }
    void clear() { m_held.clear(); }

private:
    SQLite::Database& m_database;
    std::map<std::string, SQLite::Statement, std::less<>> m_held;
};

} // namespace duskrow::store
