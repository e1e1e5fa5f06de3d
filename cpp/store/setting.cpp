// SPDX-License-Identifier: MIT
#include "store/setting.h"

#include <SQLiteCpp/Statement.h>

namespace duskrow::store {

std::string setting(SQLite::Database& database, const std::string& key)
{
    SQLite::Statement query(database, "SELECT value FROM setting WHERE key=?");
    query.bind(1, key);
    return query.executeStep() ? query.getColumn(0).getString() : std::string();
}

void putSetting(SQLite::Database& database, const std::string& key, const std::string& value)
{
    SQLite::Statement insert(database, "INSERT OR REPLACE INTO setting VALUES (?,?)");
    insert.bind(1, key);
    insert.bind(2, value);
    insert.exec();
}

} // namespace duskrow::store
