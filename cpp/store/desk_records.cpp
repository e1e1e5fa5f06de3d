// SPDX-License-Identifier: MIT
#include "store/desk_records.h"

#include <algorithm>

#include "domain/base/take.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

constexpr const char* visitsOfSeason =
    "SELECT v.id, v.trap, v.day, CASE v.outcome WHEN 'could_not_count' THEN NULL ELSE v.pest END, "
    "v.reported_how FROM now_visit v JOIN now_trap t ON t.id=v.trap WHERE t.season=? AND v.withdrawn IS NULL "
    "AND t.withdrawn IS NULL AND v.day IS NOT NULL ORDER BY v.trap, v.day, v.at_ms";
// What waits for a segment before it is not here yet, and comes in later.
constexpr const char* markNow =
    "SELECT coalesce((SELECT min(id) - 1 FROM segment WHERE waits=1), (SELECT max(id) FROM segment), 0)";
constexpr const char* recordsSince = "SELECT DISTINCT record FROM sealed WHERE segment IN (SELECT id FROM "
                                     "segment WHERE id>? AND stream NOT IN "
                                     "(SELECT local FROM stream WHERE id=?))";

Uuid idIn(SQLite::Statement& row, int column)
{
    Uuid id;
    const SQLite::Column held = row.getColumn(column);
    const auto* bytes = static_cast<const std::uint8_t*>(held.getBlob());
    if (bytes && held.getBytes() == static_cast<int>(id.bytes.size()))
        std::copy_n(bytes, id.bytes.size(), id.bytes.begin());
    return id;
}

std::optional<ReportedHow> howIn(const std::string& code)
{
    const auto* const found = std::ranges::find(reportedHowNames, code);
    if (found == reportedHowNames.end()) return std::nullopt;
    return static_cast<ReportedHow>(found - reportedHowNames.begin());
}

std::optional<Error> readVisits(Reader& reader, const Uuid& season, std::vector<VisitOfDesk>& visits)
{
    const auto read = reader.eachRow(visitsOfSeason, {formatUuid(season)}, [&](SQLite::Statement& row) {
        const auto day = parseDay(row.getColumn(2).getString());
        if (!day) return;
        VisitOfDesk visit{idIn(row, 0), idIn(row, 1), *day, {}, {}};
        if (!row.getColumn(3).isNull()) visit.pest = Moths{row.getColumn(3).getInt64()};
        if (!row.getColumn(4).isNull()) visit.how = howIn(row.getColumn(4).getString());
        visits.push_back(visit);
    });
    return read ? std::nullopt : std::optional(read.error());
}

std::optional<Error> readMark(
    Reader& reader, std::optional<std::int64_t> since, const StreamId& own, DeskRecords& records)
{
    const auto mark = reader.eachRow(
        markNow, {}, [&](SQLite::Statement& row) { records.mark = row.getColumn(0).getInt64(); });
    if (!mark) return mark.error();
    if (!since || *since >= records.mark) return std::nullopt;
    const std::string bytes(own.begin(), own.end());
    const auto read = reader.eachRow(recordsSince, {*since, RawJson{bytes}},
        [&](SQLite::Statement& row) { records.cameIn.insert(idIn(row, 0)); });
    return read ? std::nullopt : std::optional(read.error());
}

} // namespace

const Site* DeskRecords::siteOf(const Trap& trap) const
{
    const auto found = std::ranges::lower_bound(sites, trap.site, {}, &Site::id);
    return found != sites.end() && found->id == trap.site ? &*found : nullptr;
}

Result<DeskRecords> deskRecords(
    Reader& reader, const Uuid& season, std::optional<std::int64_t> since, const StreamId& own)
{
    DeskRecords records;
    const std::vector<Value> ofSeason{formatUuid(season)};
    auto traps = reader.select<Trap>({.where = "season=?",
        .binds = ofSeason,
        .only = {"site", "season", "tag", "pest", "set_day", "end_day"}});
    if (auto error = take(std::move(traps), records.traps)) return *error;
    auto sites = reader.select<Site>(
        {.where = "season=?", .binds = ofSeason, .only = {"name", "field", "district", "keeper"}});
    if (auto error = take(std::move(sites), records.sites)) return *error;
    if (auto error = take(members(reader), records.members)) return *error;
    if (auto error = take(districts(reader), records.districts)) return *error;
    if (auto error = take(loansOfSeason(reader, season), records.loans)) return *error;
    if (auto error = readVisits(reader, season, records.visits)) return *error;
    if (auto error = readMark(reader, since, own, records)) return *error;
    records.trapsOfDesk.reserve(records.traps.size());
    for (const Trap& trap : records.traps) {
        const Site* site = records.siteOf(trap);
        records.trapsOfDesk.push_back({trap.id, site ? site->district : Uuid{}, trap.setDay, trap.endDay});
    }
    return records;
}

} // namespace duskrow::store
