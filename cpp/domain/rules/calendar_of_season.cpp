// SPDX-License-Identifier: MIT
#include "domain/rules/calendar_of_season.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace duskrow::domain {

namespace {

constexpr std::chrono::minutes evening{std::chrono::hours{18}};

using Key = std::tuple<LocalDay, DueWhat, DueReason, LocalDay>; // first day, what, why, last day

class Entries {
public:
    void add(const Uuid& trap, DueWhat what, DueReason why, LocalDay first, LocalDay last)
    {
        m_traps[{first, what, why, last}].push_back(trap);
    }

    [[nodiscard]] std::vector<CalendarEntry> finish() const
    {
        std::vector<CalendarEntry> entries;
        for (const auto& [key, traps] : m_traps) {
            const auto& [first, what, why, last] = key;
            CalendarEntry entry{what, why, first, last, traps, std::nullopt};
            if (what == DueWhat::Count) entry.alarm = evening;
            entries.push_back(std::move(entry));
        }
        return entries;
    }

private:
    std::map<Key, std::vector<Uuid>> m_traps;
};

bool belongsInCalendar(DueWhat what)
{
    return what == DueWhat::LureChange || what == DueWhat::StripChange || what == DueWhat::TakeDown
        || what == DueWhat::ScoutingWindow;
}

// Every count from the first one due to the day the traps come down; without such a day the next one only.
void addCounts(Entries& entries, const TrapToPlan& plan, LocalDay firstDue, LocalDay today)
{
    const auto end = takeDownDay(plan.rules);
    LocalDay day = firstDue < today ? nextCountDay(today, plan.rules.week) : firstDue;
    do {
        if (end && day > *end) return;
        entries.add(plan.facts.trap.id, DueWhat::Count, DueReason::WeeklyCount, day, day);
        day = countAfter(day, plan.rules);
    } while (end);
}

} // namespace

std::vector<CalendarEntry> calendarOfSeason(std::span<const TrapToPlan> traps, LocalDay today)
{
    Entries entries;
    for (const TrapToPlan& plan : traps) {
        for (const DueItem& item : dueOf(plan.facts, plan.rules, today)) {
            if (item.what == DueWhat::Count) addCounts(entries, plan, item.day, today);
            const LocalDay last = item.until.value_or(item.day);
            if (belongsInCalendar(item.what) && last >= today)
                entries.add(plan.facts.trap.id, item.what, item.why, item.day, last);
        }
    }
    return entries.finish();
}

} // namespace duskrow::domain
