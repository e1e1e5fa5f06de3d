// SPDX-License-Identifier: MIT
#include "app/round/round_view_model.h"

#include <QGuiApplication>

#include <algorithm>

#include "app/round/round_order.h"
#include "app/today_rows.h"
#include "formats/geo_uri.h"
#include "text/amounts.h"
#include "text/round_text.h"
#include "text/way_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// Distances are told again after a few steps, not at every reading.
constexpr Metres strideForNewWay{25.0};
const QString draftPrefix = QStringLiteral("round/");

} // namespace

RoundViewModel::RoundViewModel(Session& session, QObject* parent)
    : ViewModel(session, parent), m_backBy(session.clock(), m_draft), m_file(session)
{
    takeUpDraft();
    connect(&session, &Session::changed, this, &RoundViewModel::refresh);
    connect(&session.position(), &place::PositionSource::reading, this, &RoundViewModel::listenToPosition);
    connect(&m_backBy, &RoundBackBy::edited, this, &RoundViewModel::saveDraft);
    // Back from another app, perhaps on another day.
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state == Qt::ApplicationActive) refresh();
    });
    refresh();
}

QString RoundViewModel::draftKey() const
{
    return draftPrefix + QString::fromStdString(formatDay(m_day));
}

// What was settled today. What was settled on other days is over.
void RoundViewModel::takeUpDraft()
{
    m_day = session().clock().today();
    m_draft = {};
    if (const auto held = session().draft(draftKey())) m_draft.read(*held);
    const auto keys = session().reader().draftKeys();
    if (!keys) return tell(keys.error());
    for (const std::string& held : *keys) {
        const QString key = QString::fromStdString(held);
        if (key.startsWith(draftPrefix) && key != draftKey()) session().dropDraft(key);
    }
    m_backBy.readDraft();
}

void RoundViewModel::saveDraft()
{
    session().saveDraft(draftKey(), m_draft.written());
}

std::optional<GeoPoint> RoundViewModel::here() const
{
    const auto& last = session().position().last();
    return last ? std::optional(last->point) : std::nullopt;
}

RoundMetric RoundViewModel::roundMetric() const
{
    return m_draft.isSurveyGrid ? RoundMetric::SurveyGrid : RoundMetric::StraightLine;
}

RoundAsk RoundViewModel::askFor(const TodayAsk& day) const
{
    return {.day = day,
        .here = here(),
        .metric = roundMetric(),
        .infestedLast = m_draft.infestedLast,
        .marks = m_draft.marks};
}

void RoundViewModel::refresh()
{
    if (m_day != session().clock().today()) takeUpDraft();
    if (m_isLooking) {
        m_mustLookAgain = true;
        return;
    }
    look();
}

void RoundViewModel::look()
{
    const auto asked = todayAskOf(session());
    if (!asked) return tell(asked.error());
    if (!*asked) return take(RoundFound{});
    m_isLooking = true;
    m_arrangedAt = here();
    session().lookUp<RoundFound>(
        this, [ask = askFor(**asked)](store::Reader& reader) { return findRound(reader, ask); },
        [this](const Result<RoundFound>& found) {
            m_isLooking = false;
            take(found);
            if (std::exchange(m_mustLookAgain, false)) look();
        });
}

void RoundViewModel::take(const Result<RoundFound>& found)
{
    if (!found) return tell(found.error());
    clearTrouble();
    if (found->trouble) tell(*found->trouble);
    m_found = *found;
    m_isKnown = true;
    m_done.show(m_found.done);
    arrange();
}

bool RoundViewModel::isInfested(const RoundPlace& stop) const
{
    return m_draft.marks.value(stop.site, stop.isFoundInfested);
}

// Shows the stops in the person's order if there is one, else as suggested.
void RoundViewModel::arrange()
{
    m_stops = m_found.stops;
    if (m_draft.order) {
        QHash<QString, RoundPlace> byKey;
        QStringList keys;
        for (const RoundPlace& stop : m_found.stops) {
            byKey.insert(stop.key, stop);
            keys << stop.key;
        }
        m_stops.clear();
        const QStringList ordered = inOrder(keys, *m_draft.order);
        for (const QString& key : ordered) m_stops.push_back(byKey.value(key));
    }
    m_rows.show(rowsOf(m_stops));
    m_length.reset();
    for (const RoundWay& way : waysAlong(m_stops, here(), roundMetric()))
        if (way.course) m_length = m_length.value_or(Metres{0}) + way.course->distance;
    m_backBy.setRound(roundForMessage());
    m_file.setStops(m_stops);
    Q_EMIT arranged();
}

std::vector<RoundRow> RoundViewModel::rowsOf(const std::vector<RoundPlace>& stops) const
{
    const std::vector<RoundWay> ways = waysAlong(stops, here(), roundMetric());
    std::vector<RoundRow> rows;
    for (std::size_t i = 0; i < stops.size(); ++i) {
        const RoundPlace& stop = stops[i];
        RoundRow row{.key = stop.key,
            //: the place of a stop in the round, then its name
            .title = tr("%1. %2").arg(text::number(static_cast<std::int64_t>(i + 1)), stop.title),
            .line = stop.line,
            .route = stop.route,
            .subject = stop.subject,
            .isInfested = isInfested(stop)};
        if (stop.place) row.map = QUrl::fromEncoded(QByteArray::fromStdString(formats::geoUri(*stop.place)));
        if (!stop.place) row.way = tr("Nobody noted where it is.");
        if (const auto& course = ways[i].course)
            row.way = ways[i].isFromHere ? text::wayThere(*course) : text::wayOn(*course);
        rows.push_back(std::move(row));
    }
    return rows;
}

text::BackBy RoundViewModel::roundForMessage() const
{
    const auto& programme = session().programme();
    text::BackBy round{.programme = programme ? QString::fromStdString(programme->name) : QString(),
        .stops = m_stops.size()};
    if (m_stops.empty()) return round;
    round.lastStop = m_stops.back().title;
    round.lastPlace = m_stops.back().place;
    return round;
}

void RoundViewModel::listenToPosition()
{
    const auto now = here();
    if (!now || !m_isKnown) return;
    // With the first fix the stops come into an order; afterwards they must not shuffle under a finger.
    if (!m_arrangedAt) return refresh();
    if (courseBetween(*m_arrangedAt, *now).distance < strideForNewWay) return;
    m_arrangedAt = now;
    arrange();
}

void RoundViewModel::move(const QString& key, int by)
{
    QStringList keys;
    for (const RoundPlace& stop : m_stops) keys << stop.key;
    const QStringList after = moved(keys, key, by);
    if (after == keys) return;
    m_draft.order = after;
    saveDraft();
    arrange();
}

void RoundViewModel::suggestAgain()
{
    m_draft.order.reset();
    saveDraft();
    refresh();
}

void RoundViewModel::setInfestedLast(bool last)
{
    if (last == m_draft.infestedLast) return;
    m_draft.infestedLast = last;
    saveDraft();
    Q_EMIT arranged();
    refresh();
}

void RoundViewModel::setInfested(const QString& key, bool isInfested)
{
    for (const RoundPlace& stop : m_stops) {
        if (stop.key != key || this->isInfested(stop) == isInfested) continue;
        if (stop.isFoundInfested == isInfested)
            m_draft.marks.remove(stop.site);
        else
            m_draft.marks.insert(stop.site, isInfested);
        saveDraft();
        arrange();
        return refresh();
    }
}

QString RoundViewModel::metric() const
{
    return m_draft.isSurveyGrid ? QStringLiteral("grid") : QStringLiteral("straight");
}

void RoundViewModel::setMetric(const QString& metric)
{
    if (metric == this->metric()) return;
    m_draft.isSurveyGrid = metric == QLatin1String("grid");
    saveDraft();
    arrange();
    refresh();
}

QString RoundViewModel::heading() const
{
    if (!m_isKnown) return tr("The day's round");
    if (m_stops.empty() && m_done.count() > 0) return tr("The round is done");
    return headingOf(m_stops.size());
}

QString RoundViewModel::date() const
{
    return text::day(m_day);
}

QString RoundViewModel::orderLine() const
{
    if (m_stops.empty()) return {};
    if (m_draft.order) return tr("Your own order, kept for today.");
    if (m_found.trouble) return tr("By name: there are too many stops to order.");
    if (!m_found.isFromHere) return tr("By name: without a position nobody knows which stop is near.");
    const bool isWeighed = m_draft.infestedLast
        && std::any_of(m_stops.begin(), m_stops.end(), [this](const auto& stop) { return isInfested(stop); });
    return isWeighed ? tr("The shortest way found from here, infested fields last.")
                     : tr("The shortest way found from here.");
}

QString RoundViewModel::lengthLine() const
{
    if (!m_length) return {};
    const bool isWhole = std::all_of(
        m_stops.begin(), m_stops.end(), [](const RoundPlace& stop) { return stop.place.has_value(); });
    return text::roundLength(*m_length, roundMetric(), isWhole);
}

QString RoundViewModel::infestedLine() const
{
    QStringList fields;
    std::size_t count = 0;
    for (const RoundPlace& stop : m_stops) {
        if (!isInfested(stop) || fields.contains(stop.site)) continue;
        fields << stop.site;
        ++count;
    }
    if (count == 0) return tr("No field of this round is known to be infested.");
    if (count == 1) return tr("One field of this round is infested.");
    return tr("%1 fields of this round are infested.").arg(text::number(static_cast<std::int64_t>(count)));
}

QString RoundViewModel::coolBoxLine() const
{
    return text::coolBoxReminder(static_cast<std::size_t>(std::count_if(
        m_stops.begin(), m_stops.end(), [](const RoundPlace& stop) { return stop.changesLure; })));
}

QStringList RoundViewModel::reminders() const
{
    return text::roundReminders() + m_found.cautions;
}

} // namespace duskrow::app
