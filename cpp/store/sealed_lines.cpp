// SPDX-License-Identifier: MIT
#include "store/sealed_lines.h"

#include <algorithm>
#include <cstring>
#include <nlohmann/json.hpp>

#include "domain/log/bounded_json.h"
#include "domain/log/packing.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

constexpr std::size_t mostHeldBytes = std::size_t{8} << 20;
constexpr std::size_t mostUnpackedBytes = std::size_t{9} << 20; // 8 MiB of changes, or hashes in their place

std::vector<std::string_view> linesOf(std::string_view text)
{
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        lines.push_back(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return lines;
}

// Whether the header of a segment names an ability that this version lacks: it has none so far. Headers are
// canonical, so one that needs nothing says just this.
bool needsMore(std::string_view header)
{
    constexpr std::string_view word = "\"needs\"";
    constexpr std::string_view nothing = "\"needs\":[]";
    std::size_t at = header.find(word);
    while (at != std::string_view::npos && header.substr(at).starts_with(nothing))
        at = header.find(word, at + word.size());
    if (at == std::string_view::npos) return false;
    const auto json = parseBounded(header, 16);
    return json && json->is_object() && json->contains("needs") && !(*json)["needs"].empty();
}

} // namespace

std::shared_ptr<const UnpackedSegment> SealedLines::segment(std::int64_t id)
{
    for (auto held = m_held.begin(); held != m_held.end(); ++held) {
        if (held->id != id) continue;
        if (held->isWhole || held->version == version()) {
            m_held.splice(m_held.begin(), m_held, held);
            return held->unpacked;
        }
        m_bytes -= held->unpacked->text.size();
        m_held.erase(held);
        break;
    }
    const std::int64_t before = version();
    Running query = m_statements.prepared("SELECT payload, header FROM segment WHERE id=?");
    query->bind(1, id);
    if (!query->executeStep()) return nullptr;
    const SQLite::Column column = query->getColumn(0);
    auto text =
        unpack({static_cast<const char*>(column.getBlob()), static_cast<std::size_t>(column.getBytes())},
            mostUnpackedBytes);
    if (!text) return nullptr;
    auto unpacked = std::make_shared<UnpackedSegment>();
    unpacked->text = std::move(*text);
    unpacked->lines = linesOf(unpacked->text);
    const SQLite::Column header = query->getColumn(1);
    unpacked->isUnread =
        needsMore({static_cast<const char*>(header.getBlob()), static_cast<std::size_t>(header.getBytes())});
    m_bytes += unpacked->text.size();
    const bool isWhole = std::all_of(unpacked->lines.begin(), unpacked->lines.end(),
        [](std::string_view line) { return line.starts_with('{'); });
    m_held.push_front({id, isWhole, before, unpacked});
    while (m_bytes > mostHeldBytes && m_held.size() > 1) {
        m_bytes -= m_held.back().unpacked->text.size();
        m_held.pop_back();
    }
    return unpacked;
}

// Grows with every commit by another connection.
std::int64_t SealedLines::version()
{
    Running query = m_statements.prepared("PRAGMA data_version");
    query->executeStep();
    return query->getColumn(0).getInt64();
}

std::vector<Change> SealedLines::changesOf(const Uuid& record, std::span<const std::int64_t> atHand)
{
    std::vector<Change> changes;
    const auto take = [&](std::string_view body) {
        if (auto change = readChange(body)) changes.push_back(std::move(*change));
    };
    {
        Running query = m_statements.prepared("SELECT segment, line FROM sealed WHERE record=?");
        query->bind(1, record.bytes.data(), static_cast<int>(record.bytes.size()));
        while (query->executeStep()) {
            const std::int64_t id = query->getColumn(0).getInt64();
            if (std::find(atHand.begin(), atHand.end(), id) != atHand.end()) continue;
            const auto unpacked = segment(id);
            const auto line = static_cast<std::size_t>(query->getColumn(1).getInt64());
            if (unpacked && line < unpacked->lines.size()) take(unpacked->lines[line]);
        }
    }
    Running own = m_statements.prepared("SELECT body FROM change WHERE record=?");
    own->bind(1, record.bytes.data(), static_cast<int>(record.bytes.size()));
    while (own->executeStep()) take(own->getColumn(0).getString());
    return changes;
}

void SealedLines::clear()
{
    m_held.clear();
    m_bytes = 0;
}

std::int64_t SealedLines::countOf(const Uuid& record)
{
    Running query = m_statements.prepared("SELECT (SELECT count(*) FROM sealed WHERE record=?1) + (SELECT "
                                          "count(*) FROM change WHERE record=?1)");
    bindBytes(*query, 1, record.bytes);
    query->executeStep();
    return query->getColumn(0).getInt64();
}

bool SealedLines::isKnown(const Uuid& record)
{
    Running query = m_statements.prepared("SELECT EXISTS (SELECT 1 FROM change WHERE record=?1) OR EXISTS "
                                          "(SELECT 1 FROM sealed WHERE record=?1)");
    bindBytes(*query, 1, record.bytes);
    query->executeStep();
    return query->getColumn(0).getInt() != 0;
}

// Goes from one record that is there to the next: where few are, few are asked after.
bool SealedLines::knowsAny(std::span<const Uuid> records)
{
    for (const char* sql : {"SELECT record FROM sealed WHERE record>=? ORDER BY record LIMIT 1",
             "SELECT record FROM change WHERE record>=? ORDER BY record LIMIT 1"}) {
        Uuid there; // none lies between this one and those that were passed
        for (const Uuid& record : records) {
            if (record < there) continue;
            Running query = m_statements.prepared(sql);
            bindBytes(*query, 1, record.bytes);
            if (!query->executeStep()) break;
            const SQLite::Column column = query->getColumn(0);
            if (column.getBytes() != static_cast<int>(there.bytes.size())) break; // no id: a damaged row
            std::memcpy(there.bytes.data(), column.getBlob(), there.bytes.size());
            if (there == record) return true;
        }
    }
    return false;
}

} // namespace duskrow::store
