// SPDX-License-Identifier: MIT
#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <map>
#include <memory>

#include "sync/hub/store/engine.h"

namespace duskrow::hub {

// A connection and the statements it has prepared. One thread at a time.
struct SqliteConnection {
    std::string path;
    std::unique_ptr<SQLite::Database> database;
    std::map<std::string, std::unique_ptr<SQLite::Statement>, std::less<>> statements;
};

class SqliteSession final : public Session {
public:
    explicit SqliteSession(SqliteConnection& connection) : m_connection(connection) { }

    Rows run(std::string_view sql, const std::vector<Cell>& values = {}) override;
    [[nodiscard]] std::string_view forUpdate() const override { return ""; }

private:
    SQLite::Statement& prepared(std::string_view sql);

    SqliteConnection& m_connection;
};

} // namespace duskrow::hub
