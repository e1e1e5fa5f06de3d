// SPDX-License-Identifier: MIT
#include "app/season_calendar.h"

#include "publish/season_events.h"

namespace duskrow::app {

using namespace duskrow::domain;

Result<formats::Calendar> seasonCalendar(
    store::Reader& reader, const TodayAsk& ask, const QString& name, Instant stamp)
{
    const auto records = SeasonRecords::read(reader, ask.season, VisitFields::ForDue);
    if (!records) return records.error();
    RulesByTrap rules(ask);
    publish::TrapsToPlan plan;
    for (const Trap& trap : records->traps()) {
        const DueRules* ofTrap = rules.of(trap);
        if (!ofTrap || !records->isShownTo(ask.viewer, trap, ask.today)) continue;
        plan.traps.push_back({records->factsOf(trap), *ofTrap});
        plan.titles[trap.id] = records->titleOf(trap);
    }
    return formats::Calendar{name.toStdString(), stamp, publish::seasonEvents(plan, ask.today)};
}

} // namespace duskrow::app
