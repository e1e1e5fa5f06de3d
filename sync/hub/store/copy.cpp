// SPDX-License-Identifier: MIT
#include "sync/hub/store/copy.h"

#include <array>

namespace duskrow::hub {

namespace {

struct Table {
    const char* name;
    const char* columns;
    const char* key; // unique, and in it the order to read in
    int width;
    bool isLarge; // read row by row
};

// Every table that is copied; the order does not matter.
constexpr std::array tables{
    Table{"programme", "programme, name, root, epoch, head, made_ms", "programme", 6, false},
    Table{"founding", "key, name, until_ms, programme, stream", "key", 5, false},
    Table{"stream", "programme, stream, key, last, forked", "programme, stream", 5, false},
    Table{"segment", "programme, at, stream, first, last, id, pushed_by, received_ms, bytes", "programme, at",
        9, true},
    Table{"fact", "programme, at, n, line", "programme, at, n", 4, false},
    Table{"invitation", "key, programme", "key, programme", 2, false},
    Table{"aside", "programme, file, stream, first, last, id, reason, pushed_by, received_ms, bytes",
        "programme, file", 10, true},
    Table{
        "photograph", "programme, photograph, size, held, whole, made_ms", "programme, photograph", 6, false},
    Table{"photograph_part", "programme, photograph, start, bytes", "programme, photograph, start", 4, true},
    Table{"publication", "programme, name, hash, put_by, put_ms, bytes", "programme, name", 6, true},
    Table{"audit", "programme, at_ms, id, stream, what, detail", "programme, at_ms, id", 6, false},
};

std::string insertSql(const Table& table)
{
    std::string sql = "INSERT INTO " + std::string(table.name) + " (" + table.columns + ") VALUES (";
    for (int i = 1; i <= table.width; ++i) sql += (i == 1 ? "$" : ", $") + std::to_string(i);
    return sql + ")";
}

std::vector<std::string> columnsOf(const char* list)
{
    std::vector<std::string> columns;
    std::string rest = list;
    for (auto comma = rest.find(", "); comma != std::string::npos; comma = rest.find(", ")) {
        columns.push_back(rest.substr(0, comma));
        rest.erase(0, comma + 2);
    }
    columns.push_back(rest);
    return columns;
}

Result<Done> write(Engine& to, const Table& table, const Rows& rows)
{
    return to.write([&](Session& session) {
        for (const Row& row : rows) session.run(insertSql(table), row.cells());
    });
}

// Large rows come one at a time, each found by its key: a season's photographs need not fit into memory.
Result<Done> copyLarge(Session& from, Engine& to, const Table& table)
{
    std::string byKey = "SELECT " + std::string(table.columns) + " FROM " + table.name + " WHERE ";
    int at = 0;
    for (const std::string& column : columnsOf(table.key)) {
        byKey += (at == 0 ? "" : " AND ") + column + "=$" + std::to_string(at + 1);
        ++at;
    }
    for (const Row& key : from.run("SELECT " + std::string(table.key) + " FROM " + table.name)) {
        const auto done = write(to, table, from.run(byKey, key.cells()));
        if (!done) return done.error();
    }
    return Done{};
}

Result<Done> copyTable(Session& from, Engine& to, const Table& table)
{
    if (table.isLarge) return copyLarge(from, to, table);
    return write(to, table, from.run("SELECT " + std::string(table.columns) + " FROM " + table.name));
}

} // namespace

Result<Done> copyStore(Engine& from, Engine& to)
{
    std::int64_t there = 0;
    const auto counted = to.read([&](Session& session) {
        there = 0;
        for (const char* name : {"programme", "founding"})
            for (const Row& row : session.run("SELECT count(*) FROM " + std::string(name)))
                there += row.number(0);
    });
    if (!counted) return counted.error();
    if (there > 0) return domain::Error{domain::ErrorCode::StoreExists, {"--store"}};
    Result<Done> copied = Done{};
    const auto read = from.read([&](Session& session) {
        for (const Table& table : tables)
            if (copied) copied = copyTable(session, to, table);
    });
    return read ? copied : read;
}

Result<Done> renewEpochs(Engine& store, Instant now)
{
    return store.write([&](Session& session) {
        session.run(
            "UPDATE programme SET epoch=CASE WHEN epoch<$1 THEN $1 ELSE epoch+1 END", {domain::toMs(now)});
    });
}

} // namespace duskrow::hub
