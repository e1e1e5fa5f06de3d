// SPDX-License-Identifier: MIT
#pragma once

#include "domain/log/fold.h"
#include "store/current_tables.h"
#include "store/sealed_lines.h"
#include "store/sqlite_error.h"

namespace duskrow::store {

// What to look for. `where` and `order` are SQL of this layer: callers above use the named queries of
// queries.h.
struct Selection {
    std::string where = "1";
    std::vector<domain::Value> binds = {}; // text in the form of an id is bound as an id
    std::string order = "id";
    bool withWithdrawn = false;
    std::vector<std::string_view> only = {}; // these fields alone are read; empty for all
};

// Looks only. One Reader belongs to one thread; open another for another thread.
class Reader {
public:
    Reader(std::unique_ptr<SQLite::Database> database, std::string path);

    // The records of a kind that a selection asks for.
    template <typename R>
    domain::Result<std::vector<R>> select(const Selection& wanted)
    {
        return guarded<std::vector<R>>(m_path, [&] {
            const auto fields = fieldsOf(domain::kindOf<R>(), wanted);
            Running query = m_statements.prepared(sqlOf(domain::kindOf<R>(), fields, wanted));
            bindAll(*query, wanted.binds);
            std::vector<R> records;
            while (query->executeStep()) readRow(*query, fields, records.emplace_back());
            return records;
        });
    }

    // The history of a record, in the order of streams and numbers. The only way to the heads: sealed
    // segments can take the place of rows later.
    domain::Result<std::vector<domain::Change>> changesOf(const domain::Uuid& record);

    domain::Result<std::optional<std::string>> draft(const std::string& key);
    domain::Result<std::vector<std::string>> draftKeys();
    domain::Result<std::optional<std::string>> deviceSetting(const std::string& key);
    domain::Result<std::int64_t> countOfChanges();

    // Each row that SQL of this layer gives. Text binds are ids where they have that form; a RawJson bind is
    // bytes.
    domain::Result<domain::Done> eachRow(const std::string& sql, const std::vector<domain::Value>& binds,
        const std::function<void(SQLite::Statement&)>& take);
    // The unpacked lines of a segment.
    SealedLines& lines() { return m_lines; }
    [[nodiscard]] const std::string& path() const { return m_path; }

private:
    domain::Result<std::optional<std::string>> oneText(const std::string& sql, const std::string& key);
    static void bindAll(SQLite::Statement& query, const std::vector<domain::Value>& binds);
    using Fields = std::vector<const domain::Field*>;
    static Fields fieldsOf(const domain::RecordKind& kind, const Selection& wanted);
    static std::string sqlOf(const domain::RecordKind& kind, const Fields& fields, const Selection& wanted);
    static void readRow(SQLite::Statement& query, const Fields& fields, domain::Record& record);

    std::unique_ptr<SQLite::Database> m_database;
    std::string m_path;
    Statements m_statements;
    SealedLines m_lines;
};

} // namespace duskrow::store
