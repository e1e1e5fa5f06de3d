// SPDX-License-Identifier: MIT
#include "store/sqlite_error.h"

#include <filesystem>
#include <sqlite3.h>

namespace duskrow::store {

using domain::Error;
using domain::ErrorCode;

namespace {

bool hasNoRoom(const std::string& path)
{
    std::error_code failure;
    const auto folder = std::filesystem::absolute(path, failure).parent_path();
    const auto space = std::filesystem::space(folder, failure);
    return !failure && space.available < std::uintmax_t{128} * 1024;
}

} // namespace

Error toError(const SQLite::Exception& failure, const std::string& path)
{
    const auto as = [&](ErrorCode code) { return Error{code, {path}, failure.what()}; };
    // A full disk shows as another fault where SQLite maps files into memory or the system writes late.
    if ((failure.getErrorCode() & 0xFF) == SQLITE_IOERR && hasNoRoom(path)) return as(ErrorCode::DiskFull);
    switch (failure.getErrorCode() & 0xFF) {
    case SQLITE_FULL:
        return as(ErrorCode::DiskFull);
    case SQLITE_READONLY:
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
        return as(ErrorCode::StoreReadOnly);
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return as(ErrorCode::StoreBusy);
    // A file that is not ours is told by its header before SQLite sees it; what SQLite finds strange after
    // that, a table that is not there included, is damage.
    case SQLITE_NOTADB:
    case SQLITE_CORRUPT:
    case SQLITE_ERROR:
    case SQLITE_CONSTRAINT:
    case SQLITE_MISMATCH:
        return as(ErrorCode::StoreDamaged);
    default:
        return as(ErrorCode::DiskFailed);
    }
}

} // namespace duskrow::store
