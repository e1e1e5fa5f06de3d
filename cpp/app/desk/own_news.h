// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <optional>
#include <set>
#include <vector>

#include "domain/bulletin/area_news.h"
#include "domain/records/bulletin.h"
#include "store/reader.h"

namespace duskrow::app {

// The districts in which a member keeps fields this season.
//
// Errors  as in queries.h
domain::Result<std::set<domain::Uuid>> ownDistricts(
    store::Reader& reader, const domain::Uuid& season, const domain::Uuid& member);

// The areas of a bulletin with the reader's own districts first, else the whole region.
struct OrderedNews {
    std::vector<domain::AreaNews> own; // at least the whole region, where it is there
    std::vector<domain::AreaNews> others;
};
OrderedNews ordered(const domain::PublishedBulletin& bulletin, const std::set<domain::Uuid>& own);

// The latest bulletin in one line, for a list of what is new.
struct LatestNews {
    QString id;
    QString title; // "Bulletin: week 28 of 2026"
    QString line; // "Your district, West: 14 of 15 in, median 96 this week, 240 so far"
};

// Errors  as in queries.h
domain::Result<std::optional<LatestNews>> latestNews(
    store::Reader& reader, const domain::Uuid& season, const domain::Uuid& member);

} // namespace duskrow::app
