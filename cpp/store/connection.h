// SPDX-License-Identifier: MIT
#pragma once

#include <SQLiteCpp/Database.h>
#include <memory>

#include "domain/base/result.h"

namespace duskrow::store {

// What the first bytes of a file say, read without touching it.
enum class FileKind { Absent, Current, Older };

// Errors  StoreNotOurs, StoreNewer, FileUnreadable; StoreDamaged when a log stands there without its
//         store, or the file is shorter than it says
domain::Result<FileKind> inspectFile(const std::string& path);

// The one connection that writes: WAL, synchronous=FULL, checkpoints. `vfs` is for fault tests.
domain::Result<std::unique_ptr<SQLite::Database>> openWriter(const std::string& path, const std::string& vfs);

// A connection that can only read.
domain::Result<std::unique_ptr<SQLite::Database>> openReader(const std::string& path, const std::string& vfs);

// A log that holds anything is taken for an unclean end when the store is opened again. SQLite empties it
// with the last connection; a reader may outlive this one. What cannot be written back now stays there, and
// that opening looks at it.
void emptyLog(SQLite::Database& database, const std::string& path);

// Closing this connection will leave the file and the log beside it as they are: for readers, and for a file
// that is refused.
void leaveAsItIs(SQLite::Database& database);

// Whether a file is there and not empty.
bool hasContent(const std::string& path);

// Brings log, drafts and settings to the newest form, each step in one transaction.
//
// Errors  StoreNewer, StoreNotOurs, StoreDamaged before anything is written; DiskFull, DiskFailed
domain::Result<domain::Done> migrate(SQLite::Database& database, const std::string& path);

} // namespace duskrow::store
