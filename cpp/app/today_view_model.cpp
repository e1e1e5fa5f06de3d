// SPDX-License-Identifier: MIT
#include "app/today_view_model.h"

#include <QCoreApplication>
#include <QGuiApplication>

#include "app/roll_over.h"
#include "app/today_rows.h"
#include "app/trap_words.h"
#include "store/queries.h"
#include "text/amounts.h"
#include "text/due_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// As much as a person goes over with the thumb; the rest is in the list of traps.
constexpr std::size_t mostDue = 30;
constexpr std::size_t mostLater = 20;

// Distances are told again after a few steps, not at every reading: a list must not shuffle under a finger.
constexpr Metres strideForNewOrder{25.0};

Row rowOfDraft(const OpenDraft& draft)
{
    Row row{.key = draft.key};
    if (draft.route == QLatin1String("setup"))
        row.title = TodayWords::tr("Go on with a half-entered set-up");
    else if (draft.subject.startsWith(QLatin1String("edit:")))
        row.title = TodayWords::tr("Go on with a half-entered correction");
    else
        row.title = TodayWords::tr("Go on with a half-entered visit");
    row.detail = draft.title;
    row.route = draft.route;
    row.subject = draft.subject;
    return row;
}

QString counted(const char* one, const char* many, std::size_t count)
{
    return count == 1 ? TodayWords::tr(one)
                      : TodayWords::tr(many).arg(QLocale().toString(static_cast<qulonglong>(count)));
}

} // namespace

TodayViewModel::TodayViewModel(Session& session, QObject* parent) : ViewModel(session, parent)
{
    connect(&session, &Session::changed, this, &TodayViewModel::refresh);
    connect(&session, &Session::draftsChanged, this, &TodayViewModel::refresh);
    connect(&session.position(), &place::PositionSource::reading, this, &TodayViewModel::listenToPosition);
    // Back from another app, perhaps on another day.
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state == Qt::ApplicationActive) refresh();
    });
    refresh();
}

QString TodayViewModel::trapShape() const
{
    if (!session().season()) return app::trapShape(nullptr, {});
    const auto uses = store::protocolsInUse(session().reader(), session().season()->id);
    const Protocol* protocol = uses && !uses->empty() ? session().protocol(uses->front().pest) : nullptr;
    return app::trapShape(protocol, protocol ? protocol->trapTypes.front().id : std::string());
}

int TodayViewModel::year() const
{
    return yearOf(session().clock().today());
}

SeasonWeek TodayViewModel::week() const
{
    const auto& season = session().season();
    return season ? seasonWeekOf(*season).value_or(SeasonWeek{}) : SeasonWeek{};
}

std::optional<ReportDue> TodayViewModel::report() const
{
    if (!m_found.isCounting) return std::nullopt;
    return reportDue(session().clock().today(), week());
}

std::optional<GeoPoint> TodayViewModel::here() const
{
    const auto& last = session().position().last();
    return last ? std::optional(last->point) : std::nullopt;
}

void TodayViewModel::refresh()
{
    if (m_isLooking) {
        m_mustLookAgain = true;
        return;
    }
    look();
}

void TodayViewModel::look()
{
    const auto asked = todayAskOf(session());
    if (!asked) return tell(asked.error());
    if (!*asked) return take(TodayFound{});
    m_isLooking = true;
    session().lookUp<TodayFound>(
        this, [ask = **asked](store::Reader& reader) { return findStops(reader, ask); },
        [this](const Result<TodayFound>& found) {
            m_isLooking = false;
            take(found);
            if (!std::exchange(m_mustLookAgain, false)) return;
            look();
        });
}

void TodayViewModel::beginSeason()
{
    const auto edits = rollOver(session().reader(), session().store().programme(), year());
    if (!edits) return tell(edits.error());
    if (edits->empty()) return;
    session().keep(*edits, std::nullopt, this, [this](const Result<store::Kept>& kept) {
        if (!kept) return tell(kept.error());
        clearTrouble();
    });
}

void TodayViewModel::take(const Result<TodayFound>& found)
{
    if (!found) return tell(found.error());
    clearTrouble();
    m_found = *found;
    m_isKnown = true;
    std::vector<Row> drafts;
    for (const OpenDraft& draft : m_found.drafts) drafts.push_back(rowOfDraft(draft));
    m_drafts.show(std::move(drafts));
    arrange();
}

void TodayViewModel::arrange()
{
    const LocalDay today = session().clock().today();
    m_rankedAt = here();
    rankStops(m_found.stops, today, m_rankedAt);
    m_act.reset();
    m_dueStops = m_hidden = 0;
    std::vector<TodayRow> due;
    std::vector<TodayRow> thisWeek;
    std::vector<TodayRow> afterwards;
    const auto add = [this](std::vector<TodayRow>& rows, std::size_t most, TodayRow row) {
        if (rows.size() < most)
            rows.push_back(std::move(row));
        else
            ++m_hidden;
    };
    for (const Stop& stop : m_found.stops) {
        TodayRow row = rowOf(stop, today);
        if (row.isDue) ++m_dueStops;
        if (row.isDue && !m_act)
            m_act = std::move(row);
        else if (row.isDue)
            add(due, mostDue, std::move(row));
        else if (stop.day() <= today + weekAhead)
            add(thisWeek, mostLater, std::move(row));
        else
            add(afterwards, mostLater, std::move(row));
    }
    m_due.show(std::move(due));
    m_thisWeek.show(std::move(thisWeek));
    m_afterwards.show(std::move(afterwards));
    Q_EMIT foundChanged();
}

void TodayViewModel::listenToPosition()
{
    const auto now = here();
    if (!now || m_found.stops.empty()) return;
    if (!m_rankedAt || courseBetween(*m_rankedAt, *now).distance >= strideForNewOrder) arrange();
}

QString TodayViewModel::heading() const
{
    return hasTraps() ? headingOf(m_dueStops) : TodayWords::tr("Today");
}

QString TodayViewModel::date() const
{
    return text::day(session().clock().today());
}

QString TodayViewModel::actReason() const
{
    if (!m_act) return {};
    if (m_act->spokenRight.isEmpty()) return m_act->firstReason;
    return m_act->spokenRight + QLatin1Char(' ') + m_act->firstReason;
}

QString TodayViewModel::moreLine() const
{
    if (m_hidden == 0) return {};
    return counted(QT_TRANSLATE_NOOP("Today", "One more stop is in the list of traps."),
        QT_TRANSLATE_NOOP("Today", "%1 more stops are in the list of traps."), m_hidden);
}

QString TodayViewModel::reportTitle() const
{
    const auto due = report();
    return due ? text::reportBy(*due) : QString();
}

QString TodayViewModel::reportLine() const
{
    if (m_found.countsToReport == 0) return TodayWords::tr("every count is in");
    return counted(QT_TRANSLATE_NOOP("Today", "one count still to come"),
        QT_TRANSLATE_NOOP("Today", "%1 counts still to come"), m_found.countsToReport);
}

QString TodayViewModel::keptLine() const
{
    if (m_found.traps == 0) return {};
    const QString visits = counted(QT_TRANSLATE_NOOP("Today", "one visit this season"),
        QT_TRANSLATE_NOOP("Today", "%1 visits this season"), m_found.visits);
    return m_found.hasOthers ? visits : TodayWords::tr("All on this device: %1.").arg(visits);
}

QString TodayViewModel::travelLine() const
{
    if (!m_found.hasOthers) return {};
    const auto& [here, handedOver, atHub] = m_found.own;
    if (here > 0)
        return counted(QT_TRANSLATE_NOOP("Today", "Only on this phone: one entry of yours"),
            QT_TRANSLATE_NOOP("Today", "Only on this phone: %1 entries of yours"),
            static_cast<std::size_t>(here));
    if (handedOver + atHub == 0) return TodayWords::tr("You have entered nothing yet");
    if (atHub == 0) return TodayWords::tr("All you entered is handed over");
    if (handedOver == 0) return TodayWords::tr("All you entered is at the hub");
    return TodayWords::tr("All you entered is handed over or at the hub");
}

} // namespace duskrow::app
