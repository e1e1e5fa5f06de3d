// SPDX-License-Identifier: MIT
#include "store/reader.h"

#include <algorithm>

#include "domain/log/value_json.h"

namespace duskrow::store {

using namespace duskrow::domain;

Reader::Reader(std::unique_ptr<SQLite::Database> database, std::string path)
    : m_database(std::move(database)), m_path(std::move(path)), m_statements(*m_database),
      m_lines(*m_database)
{
}

void Reader::bindAll(SQLite::Statement& query, const std::vector<Value>& binds)
{
    int at = 1;
    for (const Value& value : binds) {
        if (const auto* bytes = std::get_if<RawJson>(&value)) {
            query.bind(at++, bytes->text.data(), static_cast<int>(bytes->text.size()));
            continue;
        }
        const auto* text = std::get_if<std::string>(&value);
        const bool isId = text && parseUuid(*text).has_value();
        bindValue(query, at++, isId ? FieldType::Id : FieldType::Text, value);
    }
}

Reader::Fields Reader::fieldsOf(const RecordKind& kind, const Selection& wanted)
{
    Fields fields;
    for (const Field& field : kind.fields)
        if (wanted.only.empty()
            || std::find(wanted.only.begin(), wanted.only.end(), field.name) != wanted.only.end())
            fields.push_back(&field);
    return fields;
}

std::string Reader::sqlOf(const RecordKind& kind, const Fields& fields, const Selection& wanted)
{
    std::string sql = "SELECT id, newer";
    for (const Field* field : fields) sql += ", " + std::string(field->name);
    sql += " FROM " + tableOf(kind) + " WHERE (" + wanted.where + ")";
    if (!wanted.withWithdrawn) sql += " AND withdrawn IS NULL";
    return sql + " ORDER BY " + wanted.order;
}

void Reader::readRow(SQLite::Statement& query, const Fields& fields, Record& record)
{
    record.id = uuidOf(query.getColumn(0));
    int at = 2;
    for (const Field* field : fields) {
        const SQLite::Column column = query.getColumn(at++);
        if (!column.isNull()) field->set(record, columnValue(column, field->type));
    }
    const SQLite::Column newer = query.getColumn(1);
    if (newer.isNull()) return;
    const auto object = nlohmann::json::parse(newer.getString(), nullptr, false);
    if (!object.is_object()) return;
    for (const auto& [name, value] : object.items()) record.fromNewer[name] = valueOf(value);
}

Result<std::vector<Change>> Reader::changesOf(const Uuid& record)
{
    return guarded<std::vector<Change>>(m_path, [&] {
        std::vector<Change> changes = m_lines.changesOf(record);
        const auto before = [](const Change& a, const Change& b) {
            return a.ref != b.ref ? a.ref < b.ref : a != b && canonicalJson(a) < canonicalJson(b);
        };
        std::sort(changes.begin(), changes.end(), before);
        // One change may stand in two segments with other boundaries, or in one and in the own tail.
        changes.erase(std::unique(changes.begin(), changes.end()), changes.end());
        return changes;
    });
}

Result<Done> Reader::eachRow(const std::string& sql, const std::vector<Value>& binds,
    const std::function<void(SQLite::Statement&)>& take)
{
    return guarded<Done>(m_path, [&] {
        Running query = m_statements.prepared(sql);
        bindAll(*query, binds);
        while (query->executeStep()) take(*query);
        return Done{};
    });
}

Result<std::optional<std::string>> Reader::oneText(const std::string& sql, const std::string& key)
{
    return guarded<std::optional<std::string>>(m_path, [&] {
        Running query = m_statements.prepared(sql);
        query->bind(1, key);
        std::optional<std::string> text;
        if (query->executeStep()) text = query->getColumn(0).getString();
        return text;
    });
}

Result<std::optional<std::string>> Reader::draft(const std::string& key)
{
    return oneText("SELECT body FROM draft WHERE key=?", key);
}

Result<std::optional<std::string>> Reader::deviceSetting(const std::string& key)
{
    return oneText("SELECT value FROM setting WHERE key=?", "device/" + key);
}

Result<std::vector<std::string>> Reader::draftKeys()
{
    return guarded<std::vector<std::string>>(m_path, [&] {
        Running query = m_statements.prepared("SELECT key FROM draft ORDER BY key");
        std::vector<std::string> keys;
        while (query->executeStep()) keys.push_back(query->getColumn(0).getString());
        return keys;
    });
}

Result<std::int64_t> Reader::countOfChanges()
{
    return guarded<std::int64_t>(m_path, [&] {
        Running query = m_statements.prepared("SELECT (SELECT count(*) FROM change) + "
                                              "(SELECT coalesce(sum(last - first + 1), 0) FROM segment)");
        query->executeStep();
        return std::int64_t{query->getColumn(0).getInt64()};
    });
}

} // namespace duskrow::store
