// SPDX-License-Identifier: MIT
#include "app/trap_list_model.h"

#include <QCoreApplication>

#include <algorithm>
#include <tuple>

#include "domain/rules/catch_intervals.h"
#include "domain/rules/trap_now.h"
#include "text/amounts.h"
#include "text/way_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

enum Role { Trap = Qt::UserRole + 1, Title, Line, Aside, SpokenAside, Group };

struct TrapsWords {
    Q_DECLARE_TR_FUNCTIONS(Traps)
};

QString lineOf(const TrapFound& trap)
{
    QStringList parts;
    if (trap.lastCount) {
        const QString sum = trap.isAtLeast ? text::atLeast(trap.soFar) : text::number(trap.soFar.value());
        //: "259 moths", of a season that is over, respectively that goes on
        parts << (trap.isEnded ? TrapsWords::tr("%1 %2 in all") : TrapsWords::tr("%1 %2 so far"))
                     .arg(sum, trap.animal.after(trap.soFar.value()));
        if (!trap.isEnded) parts << TrapsWords::tr("counted %1").arg(text::shortDay(*trap.lastCount));
    } else {
        parts << TrapsWords::tr("not counted yet");
        if (trap.setDay) parts << TrapsWords::tr("set up %1").arg(text::shortDay(*trap.setDay));
    }
    if (trap.isEnded && trap.endDay) parts << TrapsWords::tr("ended %1").arg(text::shortDay(*trap.endDay));
    if (!trap.lentTo.isEmpty()) parts << TrapsWords::tr("lent to %1").arg(trap.lentTo);
    // A part keeps together where the line breaks.
    for (QString& part : parts) part.replace(QLatin1Char(' '), QChar::Nbsp);
    return parts.join(QStringLiteral(" · "));
}

QString asideOf(const TrapFound& trap)
{
    if (trap.isEnded) return {};
    if (trap.way) return text::wayMark(*trap.way);
    return trap.nights ? text::nights(*trap.nights) : QString();
}

QString spokenAsideOf(const TrapFound& trap)
{
    if (trap.isEnded) return {};
    if (trap.way) return text::wayThere(*trap.way);
    return trap.nights ? TrapsWords::tr("%1 since it was emptied").arg(text::nights(*trap.nights))
                       : QString();
}

std::optional<LocalDay> lastCountOf(const TrapFacts& facts)
{
    std::optional<LocalDay> last;
    for (const Visit& visit : facts.visits)
        if (visit.withdrawn.empty() && visit.outcome == Outcome::Counted && visit.day) last = visit.day;
    return last;
}

bool failedOnce(const CatchIntervals& caught)
{
    return std::any_of(caught.intervals.begin(), caught.intervals.end(),
        [](const CaughtInterval& interval) { return interval.isAtLeast; });
}

TrapFound foundOf(
    const SeasonRecords& records, const domain::Trap& trap, const Viewer& viewer, LocalDay today)
{
    const TrapFacts facts = records.factsOf(trap);
    const TrapNow now = trapNow(facts, today);
    const CatchIntervals caught = catchIntervals(facts);
    TrapFound found{.trap = trap.id, .pest = trap.pest, .title = records.titleOf(trap), .searched = {}};
    found.searched = found.title;
    if (const Site* site = records.siteOf(trap))
        found.searched += QLatin1Char(' ') + QString::fromStdString(site->field);
    found.soFar = caught.total;
    found.isAtLeast = failedOnce(caught);
    found.setDay = trap.setDay;
    found.lastCount = lastCountOf(facts);
    if (now.lastEmptied) found.nights = nightsBetween(*now.lastEmptied, today);
    found.place = now.place;
    found.endDay = trap.endDay;
    found.isEnded = trap.endDay ? *trap.endDay <= today : trap.endReason.has_value();
    const Loan* loan = records.loanOf(trap, today);
    if (loan && loan->borrower != viewer.name) found.lentTo = QString::fromStdString(loan->borrower);
    return found;
}

} // namespace

Result<std::vector<TrapFound>> findTraps(
    store::Reader& reader, const Uuid& season, const Viewer& viewer, LocalDay today)
{
    const auto records = SeasonRecords::read(reader, season, VisitFields::ForCatch);
    if (!records) return records.error();
    std::vector<TrapFound> found;
    for (const domain::Trap& trap : records->traps())
        if (records->isShownTo(viewer, trap, today)) found.push_back(foundOf(*records, trap, viewer, today));
    return found;
}

void TrapListModel::take(std::vector<TrapFound> traps)
{
    beginResetModel();
    m_shown.clear();
    m_traps = std::move(traps);
    measure();
    endResetModel();
    arrange(m_order, m_search);
}

void TrapListModel::arrange(Order order, const QString& search)
{
    m_order = order;
    m_search = search;
    constexpr double farOff = 1e9;
    const auto key = [&](std::size_t at) {
        const TrapFound& trap = m_traps[at];
        const double distance = trap.way ? trap.way->distance.value() : farOff;
        return std::tuple(trap.isEnded, order == Order::Distance ? distance : 0.0,
            order == Order::Catch ? -trap.soFar.value() : 0);
    };
    beginResetModel();
    m_shown.clear();
    for (std::size_t at = 0; at < m_traps.size(); ++at)
        if (m_traps[at].searched.contains(search.trimmed(), Qt::CaseInsensitive)) m_shown.push_back(at);
    std::sort(m_shown.begin(), m_shown.end(), [&](std::size_t a, std::size_t b) {
        const auto one = key(a);
        const auto other = key(b);
        if (one != other) return one < other;
        const int byName = QString::localeAwareCompare(m_traps[a].title, m_traps[b].title);
        return byName != 0 ? byName < 0 : m_traps[a].trap < m_traps[b].trap;
    });
    endResetModel();
    Q_EMIT countChanged();
}

void TrapListModel::standAt(const std::optional<GeoPoint>& here)
{
    if (here == m_here) return;
    m_here = here;
    measure();
    if (!m_shown.empty()) Q_EMIT dataChanged(index(0), index(count() - 1), {Aside, SpokenAside});
}

void TrapListModel::measure()
{
    for (TrapFound& trap : m_traps)
        trap.way = m_here && trap.place ? std::optional(courseBetween(*m_here, *trap.place)) : std::nullopt;
}

int TrapListModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant TrapListModel::data(const QModelIndex& index, int role) const
{
    if (index.row() < 0 || index.row() >= count()) return {};
    const TrapFound& trap = m_traps[m_shown[static_cast<std::size_t>(index.row())]];
    switch (role) {
    case Trap:
        return QString::fromStdString(formatUuid(trap.trap));
    case Title:
        return trap.title;
    case Line:
        return lineOf(trap);
    case Aside:
        return asideOf(trap);
    case SpokenAside:
        return spokenAsideOf(trap);
    case Group:
        return trap.isEnded ? TrapsWords::tr("Ended") : QString();
    default:
        return {};
    }
}

QHash<int, QByteArray> TrapListModel::roleNames() const
{
    return {{Trap, "trap"}, {Title, "title"}, {Line, "line"}, {Aside, "aside"}, {SpokenAside, "spokenAside"},
        {Group, "group"}};
}

} // namespace duskrow::app
