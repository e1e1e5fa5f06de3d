// SPDX-License-Identifier: MIT
#include "store/stranded.h"

#include <SQLiteCpp/Transaction.h>

#include "domain/log/bounded_json.h"
#include "domain/log/value_json.h"
#include "store/sqlite_error.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

struct Stranded {
    std::int64_t local = 0;
    ChangeRef ref;
    std::string body;
};

std::vector<Stranded> strandedIn(
    SQLite::Database& database, const StreamId& own, const std::set<StreamId>& keys)
{
    std::vector<std::pair<std::int64_t, StreamId>> streams;
    SQLite::Statement unsealed(database,
        "SELECT local, id FROM stream WHERE EXISTS (SELECT 1 FROM change WHERE stream=local) ORDER BY local");
    while (unsealed.executeStep()) {
        const StreamId stream = uuidOf(unsealed.getColumn(1)).bytes;
        if (stream != own && !keys.contains(stream))
            streams.emplace_back(unsealed.getColumn(0).getInt64(), stream);
    }
    std::vector<Stranded> all;
    for (const auto& [local, stream] : streams) {
        SQLite::Statement query(database, "SELECT seq, body FROM change WHERE stream=? ORDER BY seq");
        query.bind(1, local);
        while (query.executeStep())
            all.push_back({local, {stream, query.getColumn(0).getInt64()}, query.getColumn(1).getString()});
    }
    return all;
}

using Renamed = std::map<std::string, std::string>; // references, before and after

void rename(nlohmann::json& references, const Renamed& renamed)
{
    for (nlohmann::json& reference : references)
        if (const auto found = renamed.find(reference.get<std::string>()); found != renamed.end())
            reference = found->second;
}

// The same act under another reference; what this version does not know stays as it is.
std::string rewritten(nlohmann::json change, const ChangeRef& ref, const Renamed& renamed)
{
    change["stream"] = formatHex(ref.stream);
    change["seq"] = ref.seq;
    for (auto& [name, field] : change["f"].items())
        if (field.contains("b")) rename(field["b"], renamed);
    if (change.contains("saw")) rename(change["saw"], renamed);
    return canonicalText(change);
}

ChangeRef endOf(SQLite::Database& database, const StreamId& own, std::int64_t& local)
{
    const int size = static_cast<int>(own.size());
    SQLite::Statement add(database, "INSERT OR IGNORE INTO stream (id) VALUES (?)");
    add.bind(1, own.data(), size);
    add.exec();
    SQLite::Statement query(database,
        "SELECT local, max(coalesce((SELECT max(seq) FROM change WHERE stream=local), 0), "
        "coalesce((SELECT max(last) FROM segment WHERE stream=local), 0)) FROM stream WHERE id=?");
    query.bind(1, own.data(), size);
    query.executeStep();
    local = query.getColumn(0).getInt64();
    return {own, query.getColumn(1).getInt64()};
}

void replace(SQLite::Database& database, const Stranded& old, std::int64_t local, const ChangeRef& ref,
    const std::string& body)
{
    SQLite::Statement update(database, "UPDATE change SET stream=?, seq=?, body=? WHERE stream=? AND seq=?");
    update.bind(1, local);
    update.bind(2, ref.seq);
    update.bind(3, body);
    update.bind(4, old.local);
    update.bind(5, old.ref.seq);
    update.exec();
}

} // namespace

Result<Done> adoptStranded(
    SQLite::Database& database, const std::string& path, const StreamId& own, const std::set<StreamId>& keys)
{
    return guarded<Done>(path, [&] {
        const std::vector<Stranded> all = strandedIn(database, own, keys);
        if (all.empty()) return Done{};
        SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
        std::int64_t local = 0;
        ChangeRef next = endOf(database, own, local);
        Renamed renamed;
        for (const Stranded& old : all) {
            const auto change = parseBounded(old.body, 16);
            if (!change || !readChange(old.body)) continue; // damaged: a check of the store says so
            ++next.seq;
            const std::string body = rewritten(*change, next, renamed);
            renamed[formatRef(old.ref)] = formatRef(next);
            replace(database, old, local, next, body);
        }
        database.exec("DELETE FROM setting WHERE key='declaration'");
        transaction.commit();
        return Done{};
    });
}

} // namespace duskrow::store
