// SPDX-License-Identifier: MIT
#include "tool/due_stops.h"

#include <algorithm>

#include "domain/rules/protocol_rules.h"

namespace duskrow::tool {

using namespace duskrow::domain;

Result<std::vector<DueStop>> dueStops(const SeasonRecords& records, const SeasonWeek& week, LocalDay today,
    std::chrono::days ahead, ProtocolShelf& shelf)
{
    std::vector<DueStop> stops;
    const std::chrono::year year{records.season.year.value_or(yearOf(today))};
    for (const Trap& trap : records.traps) {
        const auto protocol = shelf.of(trap.pest);
        if (!protocol) return protocol.error();
        DueStop stop{
            &trap, dueOf(records.facts(trap), dueRulesOf(**protocol, trap.trapType, year, week), today)};
        std::erase_if(stop.items, [&](const DueItem& item) { return item.day > today + ahead; });
        if (!stop.items.empty()) stops.push_back(std::move(stop));
    }
    std::stable_sort(stops.begin(), stops.end(),
        [](const DueStop& a, const DueStop& b) { return a.items.front().day < b.items.front().day; });
    return stops;
}

} // namespace duskrow::tool
