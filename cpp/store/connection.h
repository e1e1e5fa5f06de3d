// SPDX-License-Identifier: MIT
#pragma once

#include <SQLiteCpp/Database.h>
#include <memory>

#include "domain/base/result.h"

namespace duskrow::store {

// What the first bytes of a file say, read without touching it.
enum class FileKind { Absent, Current, Older };

// Errors  StoreNotOurs, StoreNewer, FileUnreadable
domain::Result<FileKind> inspectFile(const std::string& path);

// The one connection that writes: WAL, synchronous=FULL, checkpoints. `vfs` is for fault tests.
domain::Result<std::unique_ptr<SQLite::Database>> openWriter(const std::string& path, const std::string& vfs);

// A connection that can only read.
domain::Result<std::unique_ptr<SQLite::Database>> openReader(const std::string& path, const std::string& vfs);

// Brings log, drafts and settings to the newest form, each step in one transaction.
domain::Result<domain::Done> migrate(SQLite::Database& database, const std::string& path);

} // namespace duskrow::store
