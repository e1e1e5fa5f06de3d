// SPDX-License-Identifier: MIT
#include "app/desk/own_news.h"

#include <QCoreApplication>

#include "publish/bulletin_record.h"
#include "store/queries.h"
#include "text/news_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct OwnNews {
    Q_DECLARE_TR_FUNCTIONS(OwnNews)
};

} // namespace

Result<std::set<Uuid>> ownDistricts(store::Reader& reader, const Uuid& season, const Uuid& member)
{
    const auto sites = store::sitesOf(reader, season);
    if (!sites) return sites.error();
    std::set<Uuid> districts;
    for (const Site& site : *sites)
        if (site.keeper == member && !site.district.isNil()) districts.insert(site.district);
    return districts;
}

OrderedNews ordered(const PublishedBulletin& bulletin, const std::set<Uuid>& own)
{
    OrderedNews news;
    std::vector<AreaNews> areas = readAreaNews(bulletin.areas);
    for (AreaNews& area : areas)
        (own.contains(area.district) ? news.own : news.others).push_back(std::move(area));
    if (news.own.empty() && !news.others.empty() && news.others.front().district.isNil()) {
        news.own.push_back(std::move(news.others.front()));
        news.others.erase(news.others.begin());
    }
    return news;
}

Result<std::optional<LatestNews>> latestNews(store::Reader& reader, const Uuid& season, const Uuid& member)
{
    const auto bulletins = publish::bulletinsOf(reader, season);
    if (!bulletins) return bulletins.error();
    if (bulletins->empty()) return std::optional<LatestNews>();
    const auto own = ownDistricts(reader, season, member);
    if (!own) return own.error();
    const PublishedBulletin& latest = bulletins->front();
    const OrderedNews news = ordered(latest, *own);
    LatestNews made{QString::fromStdString(formatUuid(latest.id)),
        OwnNews::tr("Bulletin: %1").arg(text::newsTitle(latest.week).toLower()), {}};
    if (!news.own.empty()) {
        const AreaNews& first = news.own.front();
        const QString name = QString::fromStdString(first.name);
        made.line = first.district.isNil()
            ? OwnNews::tr("The region: %1").arg(text::newsLine(first))
            : OwnNews::tr("Your district, %1: %2").arg(name, text::newsLine(first));
    }
    return std::optional(std::move(made));
}

} // namespace duskrow::app
