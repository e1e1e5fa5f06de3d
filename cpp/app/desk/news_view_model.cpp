// SPDX-License-Identifier: MIT
#include "app/desk/news_view_model.h"

#include <QDateTime>
#include <QLocale>

#include <algorithm>

#include "app/desk/own_news.h"
#include "domain/rules/bands.h"
#include "publish/bulletin_record.h"
#include "text/news_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

std::vector<Row> rowsOf(const std::vector<AreaNews>& areas, std::span<const Band> bands)
{
    std::vector<Row> rows;
    for (const AreaNews& area : areas) {
        const QString name = QString::fromStdString(area.name);
        rows.push_back({.title = area.district.isNil() ? NewsViewModel::tr("Whole region") : name,
            .besides = text::newsLine(area),
            .detail = text::newsBands(area, bands)});
    }
    return rows;
}

} // namespace

NewsViewModel::NewsViewModel(Session& session, const QString& bulletin, QObject* parent)
    : ViewModel(session, parent), m_wanted(parseUuid(bulletin.toStdString()).value_or(Uuid{}))
{
    connect(&session, &Session::changed, this, &NewsViewModel::refresh);
    refresh();
}

void NewsViewModel::refresh()
{
    const auto& season = session().season();
    if (!season) return;
    const auto all = publish::bulletinsOf(session().reader(), season->id);
    const auto own =
        ownDistricts(session().reader(), season->id, session().me() ? session().me()->id : Uuid{});
    if (!all || !own) return tell(all ? own.error() : all.error());
    clearTrouble();
    const auto found = m_wanted.isNil() ? all->begin() : std::ranges::find(*all, m_wanted, &Record::id);
    m_isFound = found != all->end();
    std::vector<Row> weeks;
    for (auto one = all->begin(); one != all->end(); ++one)
        if (one != found)
            weeks.push_back({.title = text::newsTitle(one->week),
                .detail = QString::fromStdString(one->title),
                .route = QStringLiteral("news"),
                .subject = QString::fromStdString(formatUuid(one->id))});
    m_weeks.show(std::move(weeks));
    if (m_isFound) {
        m_title = QString::fromStdString(found->title);
        m_text = QString::fromStdString(found->text);
        const QDateTime at = QDateTime::fromMSecsSinceEpoch(found->publishedMs.value_or(0));
        m_besides = tr("Published %1").arg(QLocale().toString(at.date(), QLocale::ShortFormat));
        if (found->issue.value_or(1) > 1)
            m_besides = tr("%1, issue %2, in place of the one before").arg(m_besides).arg(*found->issue);
        const Protocol* protocol = session().protocol(found->pest);
        std::vector<Band> known;
        if (protocol)
            if (const auto bands = bandsFor(*protocol, found->trapType))
                known.assign(bands->begin(), bands->end());
        const OrderedNews news = ordered(*found, *own);
        m_own.show(rowsOf(news.own, known));
        m_others.show(rowsOf(news.others, known));
    }
    Q_EMIT refreshed();
}

} // namespace duskrow::app
