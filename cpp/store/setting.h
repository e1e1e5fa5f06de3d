// SPDX-License-Identifier: MIT
#pragma once

#include <SQLiteCpp/Database.h>
#include <string>

namespace duskrow::store {

// What the store notes about itself, by key; empty when there is nothing.
std::string setting(SQLite::Database& database, const std::string& key);
void putSetting(SQLite::Database& database, const std::string& key, const std::string& value);

} // namespace duskrow::store
