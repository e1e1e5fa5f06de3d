// SPDX-License-Identifier: MIT
#pragma once

#include <SQLiteCpp/Exception.h>

#include "domain/base/result.h"

namespace duskrow::store {

// What an SQLite failure means to a person: a full disk, a read-only folder, a busy or damaged file.
domain::Error toError(const SQLite::Exception& failure, const std::string& path);

// Runs work that may throw SQLite's exception and turns it into an Error. Nothing throws out of store.
template <typename T, typename Work>
domain::Result<T> guarded(const std::string& path, Work&& work)
{
    try {
        return work();
    } catch (const SQLite::Exception& failure) {
        return toError(failure, path);
    }
}

} // namespace duskrow::store
