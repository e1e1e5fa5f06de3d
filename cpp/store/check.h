// SPDX-License-Identifier: MIT
#pragma once

#include "store/connection.h"
#include "store/current_tables.h"

namespace duskrow::store {

// What a look at the whole file found.
struct CheckReport {
    std::string integrity; // SQLite's own verdict; "ok" when sound
    std::int64_t changes = 0;
    std::int64_t unreadable = 0; // changes whose bytes are no change any more, or another one
    std::int64_t gaps = 0; // missing numbers within streams
    bool tablesEqual = false; // the current tables are what the log comes to

    [[nodiscard]] bool isSound() const
    {
        return integrity == "ok" && unreadable == 0 && gaps == 0 && tablesEqual;
    }
};

// Checks a store without changing it: the log is folded again in a copy in memory and the tables compared.
//
// Errors  those of inspectFile; StoreMissing; StoreDamaged when the file cannot be read at all
domain::Result<CheckReport> checkStore(const std::string& path);

} // namespace duskrow::store
