// SPDX-License-Identifier: MIT
#include "store/current_tables.h"

#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <cstring>

#include "domain/log/value_json.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

// Raised by hand when the generated tables themselves change their form.
constexpr int tableForm = 2;

std::string columnType(FieldType type)
{
    switch (type) {
    case FieldType::Flag:
    case FieldType::Integer:
        return "INTEGER";
    case FieldType::Id:
        return "BLOB";
    case FieldType::Text:
    case FieldType::Code:
    case FieldType::Day:
    case FieldType::Decimal:
        break;
    }
    return "TEXT";
}

std::string textOf(const Value& value)
{
    if (const auto* text = std::get_if<std::string>(&value)) return *text;
    if (const auto* number = std::get_if<std::int64_t>(&value)) return std::to_string(*number);
    if (const auto* flag = std::get_if<bool>(&value)) return *flag ? "true" : "false";
    if (const auto* raw = std::get_if<RawJson>(&value)) return raw->text;
    return {};
}

// The text of `newer`: what a record cannot hold, by field name, with the JSON type kept.
std::string newerText(const RecordKind& kind, const auto& fields, const auto& valueOf)
{
    nlohmann::json object = nlohmann::json::object();
    for (const auto& [name, held] : fields) {
        const Value& value = valueOf(name, held);
        const Field* field = kind.find(name);
        if (!isEmpty(value) && !(field && canHold(*field, value))) object[name] = jsonOf(value);
    }
    return object.empty() ? std::string() : canonicalText(object);
}

// Everything that decides which values a column takes: a new code or a wider bound lets values in that stood
// in `newer` before.
std::string declarationOf(const Field& field)
{
    std::string all(field.name);
    for (const int part : {static_cast<int>(field.type), static_cast<int>(field.merge), int{field.indexed}})
        all += '/' + std::to_string(part);
    all += '/' + std::to_string(field.low) + '/' + std::to_string(field.high);
    for (const std::string_view code : field.codes) all += '/' + std::string(code);
    return all;
}

// Why a change is not among the records, as the tables say it.
std::string_view reasonOf(Standing standing)
{
    switch (standing) {
    case Standing::Counts:
        break;
    case Standing::NotEnrolled:
        return "not_enrolled";
    case Standing::Ended:
        return "ended";
    case Standing::MemberEnded:
        return "member_ended";
    case Standing::NotYours:
        return "not_yours";
    case Standing::OtherSite:
        return "other_site";
    case Standing::CoordinatorOnly:
        return "coordinator_only";
    case Standing::RootOnly:
        return "root_only";
    case Standing::SettlingNotYours:
        return "settling_not_yours";
    }
    return "counts";
}

} // namespace

std::string blobOf(const Uuid& id)
{
    return {reinterpret_cast<const char*>(id.bytes.data()), id.bytes.size()};
}

Uuid uuidOf(const SQLite::Column& column)
{
    Uuid id;
    if (column.getBytes() == 16) std::memcpy(id.bytes.data(), column.getBlob(), 16);
    return id;
}

std::string tableOf(const RecordKind& kind)
{
    return "now_" + std::string(kind.name);
}

std::string columnsOf(const RecordKind& kind)
{
    std::string columns;
    for (const Field& field : kind.fields) columns += (columns.empty() ? "" : ",") + std::string(field.name);
    return columns;
}

void bindValue(SQLite::Statement& statement, int at, FieldType type, const Value& value)
{
    if (isEmpty(value))
        statement.bind(at);
    else if (const auto* number = std::get_if<std::int64_t>(&value))
        statement.bind(at, *number);
    else if (const auto* flag = std::get_if<bool>(&value))
        statement.bind(at, *flag ? 1 : 0);
    else if (type == FieldType::Id) {
        const std::string blob = blobOf(parseUuid(textOf(value)).value_or(Uuid{}));
        statement.bind(at, blob.data(), static_cast<int>(blob.size()));
    } else if (const auto* text = std::get_if<std::string>(&value))
        statement.bindNoCopy(at, *text);
    else
        statement.bind(at, textOf(value));
}

Value columnValue(const SQLite::Column& column, FieldType type)
{
    if (column.isNull()) return {};
    if (type == FieldType::Flag) return column.getInt() != 0;
    if (type == FieldType::Integer) return static_cast<std::int64_t>(column.getInt64());
    if (type == FieldType::Id) return formatUuid(uuidOf(column));
    return column.getString();
}

std::string CurrentTables::declarationHash()
{
    std::string all = std::to_string(tableForm);
    for (const RecordKind* kind : recordKinds()) {
        all += '\n' + std::string(kind->name);
        for (const Field& field : kind->fields) all += ' ' + declarationOf(field);
    }
    return formatHex(hashOf(all));
}

bool CurrentTables::isStale() const
{
    SQLite::Statement query(m_database, "SELECT value FROM setting WHERE key='declaration'");
    return !query.executeStep() || query.getColumn(0).getString() != declarationHash();
}

void CurrentTables::create()
{
    m_statements.clear();
    m_rows.clear();
    std::vector<std::string> old;
    SQLite::Statement query(
        m_database, "SELECT name FROM sqlite_schema WHERE type='table' AND name LIKE 'now\\_%' ESCAPE '\\'");
    while (query.executeStep()) old.push_back(query.getColumn(0).getString());
    query.reset();
    for (const std::string& name : old) m_database.exec("DROP TABLE " + name);

    for (const RecordKind* kind : recordKinds()) {
        std::string sql = "CREATE TABLE " + tableOf(*kind) + " (id BLOB PRIMARY KEY";
        for (const Field& field : kind->fields)
            sql.append(", ").append(field.name).append(" ").append(columnType(field.type));
        m_database.exec(sql + ", newer TEXT, brought_back INTEGER) STRICT, WITHOUT ROWID");
        for (const Field& field : kind->fields)
            if (field.indexed) {
                const std::string column(field.name);
                m_database.exec("CREATE INDEX " + tableOf(*kind) + '_' + column + " ON " + tableOf(*kind)
                    + '(' + column + ')');
            }
    }
    m_database.exec(
        "CREATE TABLE now_difference (record BLOB, kind TEXT, field TEXT, PRIMARY KEY (record, field)) "
        "STRICT, WITHOUT ROWID");
    m_database.exec("CREATE TABLE now_aside (record BLOB, change TEXT, kind TEXT, reason TEXT, "
                    "PRIMARY KEY (record, change)) STRICT, WITHOUT ROWID");
    m_database.exec("CREATE TABLE now_stale (record BLOB PRIMARY KEY, kind TEXT) STRICT, WITHOUT ROWID");
    m_database.exec("CREATE TABLE now_roster (record BLOB PRIMARY KEY) STRICT, WITHOUT ROWID");
}

void CurrentTables::stamp()
{
    SQLite::Statement stamp(m_database, "INSERT OR REPLACE INTO setting VALUES ('declaration', ?)");
    stamp.bind(1, declarationHash());
    stamp.exec();
}

// It is found by the kind: its SQL is too long to be made and looked up for every row.
CurrentTables::Row& CurrentTables::rowOf(const RecordKind& kind)
{
    const auto found = m_rows.find(&kind);
    if (found != m_rows.end()) return found->second;
    std::string sql = "INSERT OR REPLACE INTO " + tableOf(kind) + " (id," + columnsOf(kind)
        + ",newer,brought_back) VALUES (?";
    for (std::size_t i = 0; i < kind.fields.size() + 2; ++i) sql += ",?";
    Row row{SQLite::Statement(m_database, sql + ')'), {}, {}};
    for (const Field& field : kind.fields)
        row.columns.emplace_back(field.name, static_cast<int>(row.columns.size()));
    std::sort(row.columns.begin(), row.columns.end());
    return m_rows.try_emplace(&kind, std::move(row)).first->second;
}

void CurrentTables::put(const Folded& folded, bool isNew)
{
    const RecordKind* kind = findKind(folded.kind);
    if (kind && folded.isThere) {
        Row& row = rowOf(*kind);
        Running write(row.statement);
        fill(*write, *kind, folded.record, folded.values,
            [](const std::string&, const Value& value) -> const Value& { return value; });
        write->bind(static_cast<int>(kind->fields.size()) + 3, folded.broughtBack ? 1 : 0);
        write->exec();
    }
    if (kind && !folded.isThere && !isNew) remove(tableOf(*kind), "id", folded.record);
    putQuestions(folded, isNew);
}

void CurrentTables::putOnly(const Change& only)
{
    const RecordKind* kind = findKind(only.kind);
    if (!kind) return;
    Running write(rowOf(*kind).statement);
    fill(*write, *kind, only.record, only.fields, onlyValue);
    write->bind(static_cast<int>(kind->fields.size()) + 3, 0);
    write->exec();
}

void CurrentTables::drop(const std::string& kind, const Uuid& record)
{
    if (const RecordKind* known = findKind(kind)) remove(tableOf(*known), "id", record);
}

// Values and columns are both in the order of the names: one pass. A column without a value stays NULL.
template <typename Fields, typename ValueOf>
void CurrentTables::fill(SQLite::Statement& statement, const RecordKind& kind, const Uuid& record,
    const Fields& fields, const ValueOf& valueOf)
{
    Row& row = rowOf(kind);
    row.ids.clear();
    row.ids.reserve(kind.fields.size()); // they must not move
    std::size_t held = 0;
    statement.bindNoCopy(1, record.bytes.data(), static_cast<int>(record.bytes.size()));
    auto column = row.columns.begin();
    for (const auto& [name, set] : fields) {
        while (column != row.columns.end() && column->first < name) ++column;
        if (column == row.columns.end()) break;
        const Field& field = kind.fields[static_cast<std::size_t>(column->second)];
        const Value& value = valueOf(name, set);
        if (column->first != name || !canHold(field, value)) continue;
        ++held;
        const auto* text = std::get_if<std::string>(&value);
        if (field.type == FieldType::Id && text && !text->empty()) {
            const Uuid& id = row.ids.emplace_back(parseUuid(*text).value_or(Uuid{}));
            statement.bindNoCopy(column->second + 2, id.bytes.data(), static_cast<int>(id.bytes.size()));
        } else {
            bindValue(statement, column->second + 2, field.type, value);
        }
    }
    if (held != fields.size())
        if (const std::string text = newerText(kind, fields, valueOf); !text.empty())
            statement.bind(static_cast<int>(kind.fields.size()) + 2, text);
}

void CurrentTables::remove(const std::string& table, const std::string& column, const Uuid& record)
{
    Running clear = m_statements.prepared("DELETE FROM " + table + " WHERE " + column + "=?");
    clear->bind(1, record.bytes.data(), static_cast<int>(record.bytes.size()));
    clear->exec();
}

// What waits for the coordinator: differences, what is kept aside, proposals, rulings gone stale.
void CurrentTables::putQuestions(const Folded& folded, bool isNew)
{
    if (!isNew)
        for (const char* table : {"now_difference", "now_aside", "now_stale"})
            remove(table, "record", folded.record);
    const auto name = [&](Running& insert) {
        insert->bind(1, folded.record.bytes.data(), static_cast<int>(folded.record.bytes.size()));
        insert->bind(2, folded.kind);
    };
    for (const Difference& difference : folded.differences) {
        Running insert = m_statements.prepared(
            "INSERT OR REPLACE INTO now_difference (record, kind, field) VALUES (?,?,?)");
        name(insert);
        insert->bind(3, difference.field);
        insert->exec();
    }
    const auto putAside = [&](const ChangeRef& ref, std::string_view reason) {
        Running insert = m_statements.prepared(
            "INSERT OR REPLACE INTO now_aside (record, kind, change, reason) VALUES (?,?,?,?)");
        name(insert);
        insert->bind(3, formatRef(ref));
        insert->bind(4, std::string(reason));
        insert->exec();
    };
    for (const auto& [ref, standing] : folded.aside) putAside(ref, reasonOf(standing));
    for (const ChangeRef& ref : folded.proposals) putAside(ref, "proposal");
    if (!folded.isRulingStale) return;
    Running stale = m_statements.prepared("INSERT OR REPLACE INTO now_stale (record, kind) VALUES (?,?)");
    name(stale);
    stale->exec();
}

std::string CurrentTables::dump() const
{
    std::string all;
    const auto addTable = [&](const std::string& table, const std::string& key) {
        SQLite::Statement query(m_database, "SELECT * FROM " + table + " ORDER BY " + key);
        all += table + '\n';
        while (query.executeStep()) {
            for (int i = 0; i < query.getColumnCount(); ++i) {
                const SQLite::Column column = query.getColumn(i);
                all += column.isNull() ? "-" : std::to_string(column.getBytes()) + ':' + column.getString();
                all += '|';
            }
            all += '\n';
        }
    };
    for (const RecordKind* kind : recordKinds()) addTable(tableOf(*kind), "id");
    addTable("now_difference", "record, field");
    addTable("now_aside", "record, change");
    addTable("now_stale", "record");
    addTable("now_roster", "record");
    return all;
}

} // namespace duskrow::store
