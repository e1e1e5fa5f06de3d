// SPDX-License-Identifier: MIT
#include "publish/season_events.h"

#include <QCoreApplication>
#include <QStringList>

#include "text/due_text.h"

namespace duskrow::publish {

using namespace duskrow::domain;
using formats::CalendarEvent;

namespace {

struct CalendarWords {
    Q_DECLARE_TR_FUNCTIONS(CalendarWords)
};

std::string utf8(const QString& text)
{
    return text.toUtf8().toStdString();
}

std::string uidOf(const CalendarEntry& entry)
{
    std::vector<std::string> parts{formatDay(entry.first), std::to_string(static_cast<int>(entry.what)),
        std::to_string(static_cast<int>(entry.why))};
    for (const Uuid& trap : entry.traps) parts.push_back(formatUuid(trap));
    return formatUuid(uuidFromName(parts)) + "@duskrow";
}

CalendarEvent eventOf(const CalendarEntry& entry, const TrapsToPlan& plan)
{
    QStringList titles;
    for (const Uuid& trap : entry.traps) titles << plan.titles.at(trap);
    const QString name = text::dueName(entry.what);
    CalendarEvent event{
        .uid = uidOf(entry), .when = formats::WholeDays{entry.first, entry.last}, .summary = {}};
    event.summary = titles.size() == 1 ? utf8(CalendarWords::tr("%1: %2").arg(name, titles.front()))
                                       //: a task and a number of traps: "Count: 3 traps"
                                       : utf8(CalendarWords::tr("%1: %2 traps").arg(name).arg(titles.size()));
    event.description = utf8(titles.join(QLatin1Char('\n')));
    // A whole day begins at midnight: the evening lies after its start.
    if (entry.alarm) event.alarm = formats::CalendarAlarm{-*entry.alarm, event.summary};
    return event;
}

} // namespace

std::vector<CalendarEvent> seasonEvents(const TrapsToPlan& plan, LocalDay today)
{
    std::vector<CalendarEvent> events;
    for (const CalendarEntry& entry : calendarOfSeason(plan.traps, today))
        events.push_back(eventOf(entry, plan));
    return events;
}

} // namespace duskrow::publish
