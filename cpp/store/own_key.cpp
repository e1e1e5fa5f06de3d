// SPDX-License-Identifier: MIT
#include "store/own_key.h"

#include <SQLiteCpp/Statement.h>

#include "store/setting.h"
#include "store/sqlite_error.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

// Where the own stream ends in this file.
std::int64_t endOf(SQLite::Database& database, const StreamId& stream)
{
    SQLite::Statement query(database,
        "SELECT max(coalesce((SELECT max(seq) FROM change WHERE stream=local), 0), "
        "coalesce((SELECT max(last) FROM segment WHERE stream=local), 0)) FROM stream WHERE id=?");
    query.bind(1, stream.data(), static_cast<int>(stream.size()));
    return query.executeStep() ? query.getColumn(0).getInt64() : 0;
}

// Own changes came back from elsewhere, and some before them did not: this file was put back, key and all.
bool lacksOwn(SQLite::Database& database, const StreamId& stream)
{
    SQLite::Statement query(database,
        "SELECT EXISTS (SELECT 1 FROM segment JOIN stream ON local=stream WHERE stream.id=? AND waits=1)");
    query.bind(1, stream.data(), static_cast<int>(stream.size()));
    return query.executeStep() && query.getColumn(0).getInt() != 0;
}

// A key that may go on being used: its store was not copied or restored from elsewhere (another token than
// the key file's), not put back from a backup (it ends before what was handed over), and has not met its
// double.
bool goesOn(SQLite::Database& database, const StreamKey& key)
{
    return key.installToken == setting(database, "install_token")
        && endOf(database, key.stream) >= key.handedOver && !lacksOwn(database, key.stream)
        && setting(database, "forked/" + formatHex(key.stream)).empty();
}

} // namespace

Result<OwnKey> ownKey(
    SQLite::Database& database, const std::string& path, const std::string& folder, const Uuid& programme)
{
    auto found = loadKey(folder, programme);
    if (!found) return found.error();
    const auto good = guarded<bool>(path, [&] { return *found && goesOn(database, **found); });
    if (!good) return good.error();
    const auto note = [&](const StreamKey& key) {
        return guarded<Done>(path, [&] {
            const std::string own = formatHex(key.stream);
            if (setting(database, "own_stream") != own) putSetting(database, "own_stream", own);
            return Done{};
        });
    };
    if (*good) {
        if (const auto noted = note(**found); !noted) return noted.error();
        return OwnKey{std::move(**found), false, {}};
    }
    if (*found)
        if (const auto kept = retireKey(folder, programme, **found); !kept) return kept.error();
    auto key = makeKey(folder, programme);
    if (!key) return key.error();
    const auto stored = guarded<bool>(path, [&] {
        const bool isFirst = setting(database, "install_token").empty();
        putSetting(database, "install_token", key->installToken);
        return isFirst;
    });
    if (!stored) return stored.error();
    if (const auto noted = note(*key); !noted) return noted.error();
    return OwnKey{std::move(*key), !*stored, std::move(*found)};
}

} // namespace duskrow::store
