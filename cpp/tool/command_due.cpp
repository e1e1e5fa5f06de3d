// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include <algorithm>

#include "text/amounts.h"
#include "text/due_text.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/due_stops.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using std::chrono::days;

namespace {

constexpr days daysAhead{6}; // what is due later belongs in a calendar

struct DueLine {
    std::string store;
    std::string on;
    std::string keys;
    std::string protocols;
};

void printStop(const SeasonRecords& records, const DueStop& stop, LocalDay today)
{
    const QString keeper = records.keeperOf(*stop.trap);
    print(QStringLiteral("  %1%2").arg(
        records.title(*stop.trap), keeper.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(keeper)));
    print(QStringLiteral("    %1").arg(text::dueLine(stop.items, today)));
    for (const DueItem& item : stop.items)
        print(QStringLiteral("      %1").arg(text::dueReason(item, today)));
}

void printDueStops(const SeasonRecords& records, const std::vector<DueStop>& stops, LocalDay today)
{
    const auto later = std::find_if(
        stops.begin(), stops.end(), [&](const DueStop& stop) { return stop.items.front().day > today; });
    print(text::dayAndYear(today));
    if (later == stops.begin()) print(QCoreApplication::translate("Tool", "Nothing is due today."));
    for (auto stop = stops.begin(); stop != later; ++stop) printStop(records, *stop, today);
    if (later == stops.end()) return;
    print(QString());
    print(QCoreApplication::translate("Tool", "In the next six days"));
    for (auto stop = later; stop != stops.end(); ++stop) printStop(records, *stop, today);
}

Result<int> sayDue(const DueLine& line)
{
    const auto today = dayOrToday(line.on);
    if (!today) return today.error();
    auto reader = openToLook(line.store, line.keys);
    if (!reader) return reader.error();
    const auto season = seasonWanted(**reader, {}, *today);
    if (!season) return season.error();
    const auto records = namedRecords(**reader, *season, store::VisitsFor::Due);
    if (!records) return records.error();
    const SeasonWeek week = seasonWeekOf(*season).value_or(SeasonWeek{});
    ProtocolShelf shelf(line.protocols);
    const auto stops = dueStops(*records, week, *today, daysAhead, shelf);
    if (!stops) return stops.error();
    printDueStops(*records, *stops, *today);
    if (const auto report = reportDue(*today, week)) {
        print(QString());
        print(text::reportBy(*report));
    }
    return 0;
}

} // namespace

Work declareDue(CLI::App& line)
{
    const auto typed = std::make_shared<DueLine>();
    addStore(line, typed->store);
    line.add_option("--on", typed->on, "The day asked about, such as 2026-07-14 (today if left out)")
        ->type_name("DAY");
    addKeys(line, typed->keys);
    addProtocols(line, typed->protocols);
    return [typed] { return sayDue(*typed); };
}

} // namespace duskrow::tool
