// SPDX-License-Identifier: MIT
#include "store/founders.h"

#include <SQLiteCpp/Transaction.h>

#include "store/segments.h"
#include "store/setting.h"
#include "store/sqlite_error.h"

namespace duskrow::store {

using namespace duskrow::domain;

Result<Done> settleFounders(SQLite::Database& database, const std::string& path,
    const std::set<StreamId>& joined, const StreamId& own, Folding& folding)
{
    return guarded<Done>(path, [&] {
        SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
        std::set<StreamId> founders = streamsIn(setting(database, "founders"));
        const std::set<StreamId> before = founders;
        if (founders.empty()) founders = joined;
        // One who joins is alone as well until the others' changes come, but no founder.
        if (before.empty() && !joined.empty()) putSetting(database, "joined", "1");
        const bool isMaker = joined.empty() && setting(database, "joined").empty();
        if (isMaker && (before.empty() || folding.roster().isAlone())) founders.insert(own);
        if (before.empty() && joined.empty()) {
            SQLite::Statement query(database, "SELECT lower(hex(id)) FROM stream");
            while (query.executeStep()) founders.merge(streamsIn(query.getColumn(0).getString()));
        }
        if (founders == before) return Done{};
        putSetting(database, "founders", textOf(founders));
        transaction.commit();
        folding.forget();
        return Done{};
    });
}

} // namespace duskrow::store
