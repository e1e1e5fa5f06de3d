// SPDX-License-Identifier: MIT
#include "app/roll_over.h"

#include <algorithm>

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

const Season* latestBefore(const std::vector<Season>& seasons, int year)
{
    const Season* latest = nullptr;
    for (const Season& season : seasons)
        if (season.year && *season.year < year && (!latest || *season.year > *latest->year)) latest = &season;
    return latest;
}

} // namespace

Result<std::vector<Edit>> rollOver(store::Reader& reader, const Uuid& programme, int year)
{
    std::vector<Edit> edits;
    const auto seasons = store::seasons(reader);
    if (!seasons) return seasons.error();
    const Season* before = latestBefore(*seasons, year);
    const bool isThere = std::any_of(
        seasons->begin(), seasons->end(), [&](const Season& season) { return season.year == year; });
    if (isThere || !before) return edits;
    const auto uses = store::protocolsInUse(reader, before->id);
    if (!uses) return uses.error();

    Season season = *before;
    season.id = seasonId(programme, year);
    season.year = year;
    season.fromNewer.clear();
    edits.push_back(creation(season, {}));
    for (const ProtocolUse& use : *uses) {
        ProtocolUse next;
        next.id = protocolUseId(programme, season.id, use.pest);
        next.season = season.id;
        next.pest = use.pest;
        next.version = use.version;
        edits.push_back(creation(next, {}));
    }
    return edits;
}

} // namespace duskrow::app
