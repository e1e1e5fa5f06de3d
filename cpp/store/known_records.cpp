// SPDX-License-Identifier: MIT
#include "store/known_records.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

template <typename R>
Result<Done> add(Reader& reader, std::vector<R>& all, Selection wanted)
{
    wanted.withWithdrawn = true;
    auto found = reader.select<R>(wanted);
    if (!found) return found.error();
    std::move(found->begin(), found->end(), std::back_inserter(all));
    return Done{};
}

Result<Done> addVisits(Reader& reader, std::vector<KnownVisit>& all, const std::string& season)
{
    return reader.eachRow(
        "SELECT id, trap, day, outcome, pest, withdrawn FROM now_visit WHERE day IS NOT NULL AND trap IN "
        "(SELECT id FROM now_trap WHERE season=?) ORDER BY trap, day, id",
        {season}, [&](SQLite::Statement& row) {
            const auto day = parseDay(row.getColumn(2).getString());
            if (!day) return;
            KnownVisit visit{uuidOf(row.getColumn(0)), uuidOf(row.getColumn(1)), *day, {}, {}, {}};
            const std::string outcome = row.getColumn(3).getString();
            for (std::size_t i = 0; i < outcomeNames.size(); ++i)
                if (outcome == outcomeNames[i]) visit.outcome = static_cast<Outcome>(i);
            if (!row.getColumn(4).isNull()) visit.pest = Moths{row.getColumn(4).getInt64()};
            if (!row.getColumn(5).isNull()) visit.withdrawn = row.getColumn(5).getString();
            all.push_back(std::move(visit));
        });
}

} // namespace

Result<KnownRecords> knownRecords(Reader& reader, const std::set<int>& years)
{
    KnownRecords known;
    if (const auto read = add(reader, known.seasons, {.order = "year"}); !read) return read.error();
    if (const auto read = add(reader, known.districts, {}); !read) return read.error();
    if (const auto read = add(reader, known.uses, {}); !read) return read.error();
    for (const Season& season : known.seasons) {
        if (!season.year || !years.contains(*season.year)) continue;
        const std::string id = formatUuid(season.id);
        const Selection ofSeason{.where = "season=?", .binds = {id}};
        if (const auto read = add(reader, known.sites, ofSeason); !read) return read.error();
        if (const auto read = add(reader, known.traps, ofSeason); !read) return read.error();
        if (const auto read = addVisits(reader, known.visits, id); !read) return read.error();
    }
    return known;
}

} // namespace duskrow::store
