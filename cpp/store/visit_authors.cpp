// SPDX-License-Identifier: MIT
#include "store/visit_authors.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

constexpr const char* sealedLines =
    "SELECT segment, line FROM sealed WHERE record IN (SELECT id FROM now_visit WHERE trap IN "
    "(SELECT id FROM now_trap WHERE season=?)) ORDER BY segment, line";
constexpr const char* ownLines =
    "SELECT body FROM change WHERE record IN (SELECT id FROM now_visit WHERE trap IN "
    "(SELECT id FROM now_trap WHERE season=?))";

// The change that made the record: it says of which trap, and had seen nothing of it.
void note(std::string_view body, std::map<Uuid, Uuid>& authors)
{
    const auto change = readChange(body);
    if (!change) return;
    const auto trap = change->fields.find("trap");
    if (trap != change->fields.end() && trap->second.base.empty())
        authors.emplace(change->record, change->author);
}

struct SealedLine {
    std::int64_t segment;
    std::size_t line;
};

} // namespace

Result<std::map<Uuid, Uuid>> visitAuthors(Reader& reader, const Uuid& season)
{
    std::vector<SealedLine> sealed;
    std::map<Uuid, Uuid> authors;
    const std::vector<Value> binds{formatUuid(season)};
    const auto found = reader.eachRow(sealedLines, binds, [&](SQLite::Statement& row) {
        sealed.push_back(
            {row.getColumn(0).getInt64(), static_cast<std::size_t>(row.getColumn(1).getInt64())});
    });
    if (!found) return found.error();
    // Segment by segment, so that each is unpacked once.
    const auto read = guarded<Done>(reader.path(), [&] {
        for (const SealedLine& one : sealed) {
            const auto unpacked = reader.lines().segment(one.segment);
            if (unpacked && one.line < unpacked->lines.size()) note(unpacked->lines[one.line], authors);
        }
        return Done{};
    });
    if (!read) return read.error();
    const auto own = reader.eachRow(
        ownLines, binds, [&](SQLite::Statement& row) { note(row.getColumn(0).getString(), authors); });
    if (!own) return own.error();
    return authors;
}

} // namespace duskrow::store
