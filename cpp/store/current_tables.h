// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "domain/log/fold.h"
#include "store/statements.h"

namespace duskrow::store {

// Called now and then during long work with how much is done; false stops it.
using Progress = std::function<bool(std::int64_t done, std::int64_t all)>;

// The tables of what is true now, generated from the declarations of the records and folded from the log.
// They can be dropped at any time; nothing is kept only here.
class CurrentTables {
public:
    explicit CurrentTables(SQLite::Database& database) : m_database(database), m_statements(database) { }

    // A hash over every declaration: when it differs from the file's, the tables are made anew.
    static std::string declarationHash();
    [[nodiscard]] bool isStale() const;

    // Drops all tables and makes them anew, empty; `stamp` then says that they are filled.
    void create();
    void stamp();

    // Writes what one record has come to; `isNew` when nothing stands there of it. Kinds this version does
    // not know have no table.
    void put(const domain::Folded& folded, bool isNew);

    // As put() of what fold() makes of the only change of a record, where nothing can keep it aside.
    void putOnly(const domain::Change& only);

    // Removes the row of a record that turned out to be of another kind.
    void drop(const std::string& kind, const domain::Uuid& record);

    // Every row of every table, in a fixed order, as text: equal dumps are equal tables.
    [[nodiscard]] std::string dump() const;

private:
    // The statement that writes a row of a kind, and its columns in the order of their names.
    struct Row {
        SQLite::Statement statement;
        std::vector<std::pair<std::string_view, int>> columns; // name, and place in the declaration
        std::vector<domain::Uuid> ids; // that the statement looks at while it runs
    };
    Row& rowOf(const domain::RecordKind& kind);
    // fields  by name; `valueOf` gives what stands in one
    template <typename Fields, typename ValueOf>
    void fill(SQLite::Statement& statement, const domain::RecordKind& kind, const domain::Uuid& record,
        const Fields& fields, const ValueOf& valueOf);
    void remove(const std::string& table, const std::string& column, const domain::Uuid& record);
    void putQuestions(const domain::Folded& folded, bool isNew);

    SQLite::Database& m_database;
    Statements m_statements;
    std::map<const domain::RecordKind*, Row> m_rows;
};

// The table of a kind, and its columns in the order of the declaration (without id, newer,
// brought_back).
std::string tableOf(const domain::RecordKind& kind);
std::string columnsOf(const domain::RecordKind& kind);

// The statement looks at the value itself: it must stay until the statement has run.
void bindValue(SQLite::Statement& statement, int at, domain::FieldType type, const domain::Value& value);
domain::Value columnValue(const SQLite::Column& column, domain::FieldType type);

std::string blobOf(const domain::Uuid& id);
domain::Uuid uuidOf(const SQLite::Column& column);

} // namespace duskrow::store
