// SPDX-License-Identifier: MIT
#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <map>
#include <string>

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

// The prepared statements of one connection, by their SQL.
class Statements {
public:
    explicit Statements(SQLite::Database& database) : m_database(database) { }

    Running prepared(const std::string& sql)
    {
        return Running(m_held.try_emplace(sql, m_database, sql).first->second);
    }
    void clear() { m_held.clear(); }

private:
    SQLite::Database& m_database;
    std::map<std::string, SQLite::Statement> m_held;
};

} // namespace duskrow::store
