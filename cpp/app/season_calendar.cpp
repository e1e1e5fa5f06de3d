// SPDX-License-Identifier: MIT
#include "app/season_calendar.h"

#include <QCoreApplication>

#include "domain/rules/calendar_of_season.h"
#include "text/due_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct CalendarWords {
    Q_DECLARE_TR_FUNCTIONS(CalendarWords)
};

std::string utf8(const QString& text)
{
    return text.toUtf8().toStdString();
}

struct Plan {
    std::vector<TrapToPlan> traps;
    std::map<Uuid, QString> titles;
};

Plan planOf(const SeasonRecords& records, RulesByTrap& rules, const TodayAsk& ask)
{
    Plan plan;
    for (const Trap& trap : records.traps()) {
        const DueRules* ofTrap = rules.of(trap);
        if (!ofTrap || !records.isShownTo(ask.viewer, trap, ask.today)) continue;
        plan.traps.push_back({records.factsOf(trap), *ofTrap});
        plan.titles[trap.id] = records.titleOf(trap);
    }
    return plan;
}

// The same thing on the same day for the same traps is the same event in every file.
std::string uidOf(const CalendarEntry& entry)
{
    std::vector<std::string> parts{formatDay(entry.first), std::to_string(static_cast<int>(entry.what)),
        std::to_string(static_cast<int>(entry.why))};
    for (const Uuid& trap : entry.traps) parts.push_back(formatUuid(trap));
    return formatUuid(uuidFromName(parts)) + "@duskrow";
}

formats::CalendarEvent eventOf(const CalendarEntry& entry, const Plan& plan)
{
    QStringList titles;
    for (const Uuid& trap : entry.traps) titles << plan.titles.at(trap);
    const QString name = text::dueName(entry.what);
    formats::CalendarEvent event{
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

Result<formats::Calendar> seasonCalendar(
    store::Reader& reader, const TodayAsk& ask, const QString& name, Instant stamp)
{
    const auto records = SeasonRecords::read(reader, ask.season, VisitFields::ForDue);
    if (!records) return records.error();
    RulesByTrap rules(ask);
    const Plan plan = planOf(*records, rules, ask);
    formats::Calendar calendar{.name = utf8(name), .stamp = stamp, .events = {}};
    for (const CalendarEntry& entry : calendarOfSeason(plan.traps, ask.today))
        calendar.events.push_back(eventOf(entry, plan));
    return calendar;
}

} // namespace duskrow::app
