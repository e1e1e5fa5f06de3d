// SPDX-License-Identifier: MIT
#include "app/traps_view_model.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "app/trap_words.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr std::array<std::string_view, 3> orderNames{"name", "distance", "catch"}; // in the order of Order

} // namespace

TrapsViewModel::TrapsViewModel(Session& session, QObject* parent) : ViewModel(session, parent)
{
    connect(&session, &Session::changed, this, &TrapsViewModel::refresh);
    connect(&session.position(), &place::PositionSource::reading, this, &TrapsViewModel::listenToPosition);
    listenToPosition();
    refresh();
}

std::optional<Season> TrapsViewModel::seasonToShow()
{
    if (session().season()) return session().season();
    const auto seasons = store::seasons(session().reader());
    if (!seasons) {
        tell(seasons.error());
        return std::nullopt;
    }
    return seasons->empty() ? std::nullopt : std::optional(seasons->back());
}

void TrapsViewModel::refresh()
{
    if (m_isLooking) {
        m_mustLookAgain = true;
        return;
    }
    const auto season = seasonToShow();
    if (!season) return take({});
    m_year = season->year.value_or(0);
    m_isLooking = true;
    session().lookUp<std::vector<TrapFound>>(
        this,
        [id = season->id, viewer = Viewer::of(session().me()), today = session().clock().today()](
            store::Reader& reader) { return findTraps(reader, id, viewer, today); },
        [this](const Result<std::vector<TrapFound>>& found) {
            m_isLooking = false;
            if (!found)
                tell(found.error());
            else
                take(*found);
            if (std::exchange(m_mustLookAgain, false)) refresh();
        });
}

void TrapsViewModel::take(std::vector<TrapFound> found)
{
    for (TrapFound& trap : found) trap.animal = animalOf(session(), trap.pest);
    m_traps.take(std::move(found));
    m_isKnown = true;
    Q_EMIT foundChanged();
}

void TrapsViewModel::listenToPosition()
{
    const auto& last = session().position().last();
    if (!last) return;
    m_traps.standAt(last->point);
    if (m_hasPlace) return;
    m_hasPlace = true;
    Q_EMIT placeChanged();
}

void TrapsViewModel::setSearch(const QString& search)
{
    if (search == m_search) return;
    m_search = search;
    m_traps.arrange(m_order, m_search);
    Q_EMIT arranged();
}

QString TrapsViewModel::order() const
{
    const std::string_view name = orderNames[static_cast<std::size_t>(m_order)];
    return QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
}

void TrapsViewModel::setOrder(const QString& order)
{
    const auto* const found = std::find(orderNames.begin(), orderNames.end(), order.toStdString());
    if (found == orderNames.end()) return;
    m_order = static_cast<TrapListModel::Order>(found - orderNames.begin());
    m_traps.arrange(m_order, m_search);
    Q_EMIT arranged();
}

} // namespace duskrow::app
