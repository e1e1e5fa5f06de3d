// SPDX-License-Identifier: MIT
#include "app/visit/which_trap_view_model.h"

#include <algorithm>
#include <map>

#include "app/visit/trap_book.h"
#include "app/visit/visit_words.h"
#include "store/queries.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

WhichTrapViewModel::WhichTrapViewModel(Session& session, QObject* parent)
    : QAbstractListModel(parent), m_session(session)
{
    connect(&m_session.position(), &place::PositionSource::reading, this, &WhichTrapViewModel::locate);
    if (!m_session.season()) return;
    m_session.lookUp<std::vector<Known>>(
        this, [season = m_session.season()->id](store::Reader& reader) { return read(reader, season); },
        [this](const Result<std::vector<Known>>& known) {
            if (!known) return Q_EMIT failed(known.error());
            m_known = *known;
            for (Known& trap : m_known)
                if (const Protocol* protocol = m_session.protocol(trap.pest.toStdString()))
                    trap.pest = inSentence(protocol->name);
            m_isKnown = true;
            locate();
        });
}

Result<std::vector<WhichTrapViewModel::Known>> WhichTrapViewModel::read(
    store::Reader& reader, const Uuid& season)
{
    const auto sites = store::sitesOf(reader, season);
    if (!sites) return sites.error();
    const auto traps = store::trapsOf(reader, season);
    if (!traps) return traps.error();
    std::map<Uuid, const Site*> siteOf;
    for (const Site& site : *sites) siteOf[site.id] = &site;
    std::vector<Known> known;
    for (const Trap& trap : *traps) {
        if (trap.endDay || trap.endReason) continue;
        const auto site = siteOf.find(trap.site);
        const TrapBook book{.trap = trap, .site = site == siteOf.end() ? Site{} : *site->second};
        Known one{
            .id = trap.id, .title = book.title(), .pest = QString::fromStdString(trap.pest), .place = {}};
        if (const auto place = trap.place())
            one.place = TrapPlace{trap.id, *place, trap.accuracy ? toMetres(*trap.accuracy) : Metres{0.0}};
        known.push_back(std::move(one));
    }
    std::sort(known.begin(), known.end(), [](const Known& a, const Known& b) { return a.title < b.title; });
    return known;
}

std::vector<WhichTrapViewModel::Row> WhichTrapViewModel::rowsByDistance() const
{
    std::vector<Row> rows;
    for (std::size_t i = 0; i < m_near.byDistance.size(); ++i) {
        const TrapNearby& near = m_near.byDistance[i];
        const auto known = std::find_if(
            m_known.begin(), m_known.end(), [&](const Known& trap) { return trap.id == near.id; });
        if (known != m_known.end())
            rows.push_back(
                {&*known, distanceAndBearing(near.distance, near.bearing), i < m_near.notToldApart});
    }
    return rows;
}

void WhichTrapViewModel::locate()
{
    if (!m_isKnown) return;
    beginResetModel();
    const auto here = m_session.position().last();
    std::vector<TrapPlace> places;
    for (const Known& trap : m_known)
        if (trap.place) places.push_back(*trap.place);
    m_near = here ? nearestTraps(places, here->point, here->accuracy) : NearestTraps{};
    m_rows = rowsByDistance();
    // Without a position, or for traps without a place, the names have to do.
    for (const Known& trap : m_known)
        if (!here || !trap.place) m_rows.push_back({&trap, {}, false});
    endResetModel();
    Q_EMIT changed();
}

QString WhichTrapViewModel::accuracy() const
{
    const auto& here = m_session.position().last();
    return here ? text::accuracy(here->accuracy) : QString();
}

bool WhichTrapViewModel::isInDoubt(const Uuid& trap) const
{
    if (!m_near.isAmbiguous()) return false;
    for (std::size_t i = 0; i < m_near.notToldApart && i < m_near.byDistance.size(); ++i)
        if (m_near.byDistance[i].id == trap) return true;
    return false;
}

int WhichTrapViewModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant WhichTrapViewModel::data(const QModelIndex& index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount()) return {};
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case TrapId:
        return QString::fromStdString(formatUuid(row.known->id));
    case Title:
        return row.known->title;
    case Where:
        return row.where;
    case Pest:
        return row.known->pest;
    case IsClose:
        return row.isClose;
    default:
        return {};
    }
}

QHash<int, QByteArray> WhichTrapViewModel::roleNames() const
{
    return {{TrapId, "trapId"}, {Title, "title"}, {Where, "where"}, {Pest, "pest"}, {IsClose, "isClose"}};
}

} // namespace duskrow::app
