// SPDX-License-Identifier: MIT
#include "store/founders.h"

#include <SQLiteCpp/Transaction.h>
#include <algorithm>

#include "store/segments.h"
#include "store/setting.h"
#include "store/sqlite_error.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

constexpr const char* laterKey = "later_founders";

} // namespace

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
        // Reading the roster takes a look at every site: only where it may say something new.
        if (isMaker && !founders.contains(own) && (before.empty() || folding.roster().isAlone()))
            founders.insert(own);
        if (founders.contains(own) && !before.empty() && !before.contains(own)) {
            std::set<StreamId> later = streamsIn(setting(database, laterKey));
            later.insert(own);
            putSetting(database, laterKey, textOf(later));
        }
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

void giveWay(SQLite::Database& database, const Uuid& programme, std::span<const Change> rosterChanges)
{
    const std::set<StreamId> later = streamsIn(setting(database, laterKey));
    if (later.empty()) return;
    const std::set<StreamId> all = streamsIn(setting(database, "founders"));
    std::set<StreamId> before;
    std::set_difference(
        all.begin(), all.end(), later.begin(), later.end(), std::inserter(before, before.end()));
    const Roster roster = Roster::from(programme, before, rosterChanges);
    const bool isAlone = std::all_of(roster.devices().begin(), roster.devices().end(),
        [&](const auto& device) { return all.contains(device.first); });
    if (isAlone) return;
    putSetting(database, "founders", textOf(before));
    putSetting(database, laterKey, {});
}

} // namespace duskrow::store
