// SPDX-License-Identifier: MIT
#include "app/today_rows.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>

#include "app/clock.h"
#include "text/amounts.h"
#include "text/due_text.h"
#include "text/way_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

bool isOnlyScouting(const Stop& stop)
{
    return std::all_of(stop.items.begin(), stop.items.end(),
        [](const DueItem& item) { return item.what == DueWhat::ScoutingWindow; });
}

void nameWay(TodayRow& row, const Stop& stop)
{
    if (!stop.way) return;
    row.right = text::wayMark(*stop.way);
    row.spokenRight = text::wayThere(*stop.way);
}

// Of a stop that waits: the first day on which something there is to do.
LocalDay nextDay(const Stop& stop, LocalDay today)
{
    LocalDay next = LocalDay::max();
    for (const DueItem& item : stop.items)
        if (item.day > today) next = std::min(next, item.day);
    return next == LocalDay::max() ? today : next;
}

void nameDay(TodayRow& row, LocalDay day, LocalDay today)
{
    const auto ahead = day - today;
    if (ahead.count() <= 0) return;
    if (ahead.count() == 1) {
        row.right = row.spokenRight = TodayWords::tr("tomorrow");
    } else if (ahead < weekAhead) {
        row.right = QLocale().standaloneDayName(toQDate(day).dayOfWeek(), QLocale::ShortFormat);
        row.spokenRight = text::day(day);
    } else {
        row.right = text::days(ahead);
        //: "in 11 days"
        row.spokenRight = TodayWords::tr("in %1").arg(row.right);
    }
}

void nameAct(TodayRow& row, const Stop& stop, LocalDay today)
{
    if (stop.has(DueWhat::Count, today)) {
        row.actText = TodayWords::tr("Count now");
        row.actRoute = QStringLiteral("visit");
    } else if (isOnlyScouting(stop)) {
        row.actText = TodayWords::tr("Scout the field");
        row.actRoute = QStringLiteral("walk");
    } else if (stop.isDue(today)) {
        row.actText = TodayWords::tr("See to the trap");
        row.actRoute = QStringLiteral("life");
    } else {
        row.actText = TodayWords::tr("Season of the trap");
        row.actRoute = QStringLiteral("season");
    }
}

} // namespace

TodayRow rowOf(const Stop& stop, LocalDay today)
{
    TodayRow row;
    row.trap = QString::fromStdString(formatUuid(stop.trap));
    row.isDue = stop.isDue(today);
    row.title = stop.title;
    if (isOnlyScouting(stop) && !stop.site.isEmpty()) row.title = TodayWords::tr("%1, larvae").arg(stop.site);
    row.line = text::dueLine(stop.items, today);
    row.alsoLine = text::dueLine(std::span(stop.items).subspan(1), today);
    //: a person's name, then what is due at a trap lent to that person
    if (!stop.lentTo.isEmpty()) row.line = TodayWords::tr("lent to %1: %2").arg(stop.lentTo, row.line);
    QStringList reasons;
    for (const DueItem& item : stop.items) reasons << text::dueReason(item, today);
    row.reasons = reasons.join(QLatin1Char('\n'));
    row.firstReason = reasons.takeFirst();
    row.alsoReasons = reasons.join(QLatin1Char('\n'));
    nameWay(row, stop);
    if (!row.isDue) nameDay(row, nextDay(stop, today), today);
    nameAct(row, stop, today);
    return row;
}

QString headingOf(std::size_t stops)
{
    static constexpr std::array<const char*, 11> words{QT_TRANSLATE_NOOP("Today", "Nothing due today"),
        QT_TRANSLATE_NOOP("Today", "One stop today"), QT_TRANSLATE_NOOP("Today", "Two stops today"),
        QT_TRANSLATE_NOOP("Today", "Three stops today"), QT_TRANSLATE_NOOP("Today", "Four stops today"),
        QT_TRANSLATE_NOOP("Today", "Five stops today"), QT_TRANSLATE_NOOP("Today", "Six stops today"),
        QT_TRANSLATE_NOOP("Today", "Seven stops today"), QT_TRANSLATE_NOOP("Today", "Eight stops today"),
        QT_TRANSLATE_NOOP("Today", "Nine stops today"), QT_TRANSLATE_NOOP("Today", "Ten stops today")};
    if (stops < words.size()) return TodayWords::tr(words[stops]);
    return TodayWords::tr("%1 stops today").arg(QLocale().toString(static_cast<qulonglong>(stops)));
}

} // namespace duskrow::app
