// SPDX-License-Identifier: MIT
#include "sync/hub/store/sqlite_session.h"

#include <algorithm>

#include "store/sqlite_error.h"

namespace duskrow::hub {

namespace {

void bind(SQLite::Statement& statement, int at, const Cell& cell)
{
    if (const auto* number = std::get_if<std::int64_t>(&cell)) return statement.bind(at, *number);
    if (const auto* text = std::get_if<std::string>(&cell)) return statement.bindNoCopy(at, *text);
    const std::string& bytes = std::get<Blob>(cell).bytes;
    // A null pointer would be bound as NULL.
    const char* data = bytes.empty() ? "" : bytes.data();
    statement.bindNoCopy(at, static_cast<const void*>(data), static_cast<int>(bytes.size()));
}

Cell cellOf(const SQLite::Column& column)
{
    if (column.isInteger()) return column.getInt64();
    if (column.isText()) return column.getString();
    const auto* data = static_cast<const char*>(column.getBlob());
    return data == nullptr ? Blob{} : Blob{std::string(data, static_cast<std::size_t>(column.getBytes()))};
}

} // namespace

SQLite::Statement& SqliteSession::prepared(std::string_view sql)
{
    const auto found = m_connection.statements.find(sql);
    if (found != m_connection.statements.end()) return *found->second;
    std::string own(sql);
    std::replace(own.begin(), own.end(), '$', '?');
    auto statement = std::make_unique<SQLite::Statement>(*m_connection.database, own);
    return *m_connection.statements.emplace(std::string(sql), std::move(statement)).first->second;
}

Rows SqliteSession::run(std::string_view sql, const std::vector<Cell>& values)
{
    Rows rows;
    if (isFailed()) return rows;
    try {
        SQLite::Statement& statement = prepared(sql);
        statement.tryReset();
        statement.clearBindings();
        int at = 0;
        for (const Cell& value : values) bind(statement, ++at, value);
        while (statement.executeStep()) {
            std::vector<Cell> cells;
            for (int column = 0; column < statement.getColumnCount(); ++column)
                cells.push_back(cellOf(statement.getColumn(column)));
            rows.emplace_back(std::move(cells));
        }
        statement.reset();
        statement.clearBindings();
    } catch (const SQLite::Exception& failure) {
        m_error = store::toError(failure, m_connection.path);
        m_connection.statements.clear();
        return {};
    }
    return rows;
}

} // namespace duskrow::hub
