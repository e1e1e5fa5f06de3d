// SPDX-License-Identifier: MIT
#include "store/sqlite_error.h"

#include <sqlite3.h>

namespace duskrow::store {

using domain::Error;
using domain::ErrorCode;

Error toError(const SQLite::Exception& failure, const std::string& path)
{
    const auto as = [&](ErrorCode code) { return Error{code, {path}, failure.what()}; };
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
    case SQLITE_NOTADB:
        return as(ErrorCode::StoreNotOurs);
    case SQLITE_CORRUPT:
        return as(ErrorCode::StoreDamaged);
    default:
        return as(ErrorCode::DiskFailed);
    }
}

} // namespace duskrow::store
