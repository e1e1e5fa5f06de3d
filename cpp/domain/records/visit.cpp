// SPDX-License-Identifier: MIT
#include "domain/records/visit.h"

#include "domain/records/field_table.h"

namespace duskrow::domain {

using enum MergeClass;
using table::longText;

namespace {
constexpr std::int64_t mostMoths = 999'999; // a bucket holds some thousands
} // namespace

template <>
const RecordKind& kindOf<Visit>()
{
    static const RecordKind kind{"visit",
        {
            table::withdrawn(),
            table::id("trap", &Visit::trap),
            table::day("day", &Visit::day),
            table::integer("at_ms", &Visit::atMs, "ms since 1970-01-01 UTC", 0, table::lastMs, Label),
            table::integer("offset_min", &Visit::offsetMin, "min", -1440, 1440, Label),
            table::text("observer", &Visit::observer, Label),
            table::code("reported_how", &Visit::reportedHow, reportedHowNames, Label),
            table::code("outcome", &Visit::outcome, outcomeNames),
            table::code("reason", &Visit::reason, noCountReasonNames),
            table::integer("pest", &Visit::pest, "moths", 0, mostMoths),
            table::integer("not_it", &Visit::notIt, "moths", 0, mostMoths),
            table::integer("unsure", &Visit::unsure, "moths", 0, mostMoths),
            table::integer("bees", &Visit::bees, "bees", 0, mostMoths),
            table::code("count_method", &Visit::countMethod, countMethodNames),
            table::text("part_counts", &Visit::partCounts, Measured),
            table::text("part_amounts", &Visit::partAmounts, Measured),
            table::integer("whole_amount", &Visit::wholeAmount, "microlitres or mg", 0, 1'000'000'000),
            table::integer("pest_low", &Visit::pestLow, "moths", 0, mostMoths),
            table::integer("pest_high", &Visit::pestHigh, "moths", 0, 10 * mostMoths),
            table::flag("emptied", &Visit::emptied, Measured),
            table::code("state", &Visit::state, trapStateNames),
            table::flag("at_least", &Visit::atLeast, Measured),
            table::flag("sprayed", &Visit::sprayed, Measured),
            table::text("sprayed_what", &Visit::sprayedWhat, Label),
            table::day("sprayed_day", &Visit::sprayedDay),
            table::integer("reentry_hours", &Visit::reentryHours, "h", 0, 2000),
            table::flag("lure_there", &Visit::lureThere, Measured),
            table::flag("strip_there", &Visit::stripThere, Measured),
            table::flag("moths_alive", &Visit::mothsAlive, Measured),
            table::integer("entrance_mm", &Visit::entrance, "mm", 0, table::tallest),
            table::integer("canopy_mm", &Visit::canopy, "mm", 0, table::tallest),
            table::flag("flowering_over", &Visit::floweringOver, Measured),
            table::integer("lat_e7", &Visit::latE7, "1e-7 degree", -900'000'000, 900'000'000),
            table::integer("lon_e7", &Visit::lonE7, "1e-7 degree", -1'800'000'000, 1'800'000'000),
            table::integer("accuracy_mm", &Visit::accuracy, "mm", 1, 100'000'000),
            table::text("photo", &Visit::photo, Label),
            table::text("remark", &Visit::remark, Remark, longText),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Sample>()
{
    static const RecordKind kind{"sample",
        {
            table::withdrawn(),
            table::id("visit", &Sample::visit),
            table::id("trap", &Sample::trap),
            table::required(table::text("number", &Sample::number, Label)),
            table::integer("moths", &Sample::moths, "moths", 0, mostMoths),
            table::code("state", &Sample::state, sampleStateNames, Label),
            table::day("kept_day", &Sample::keptDay, Label),
            table::day("sent_day", &Sample::sentDay, Label),
            table::day("received_day", &Sample::receivedDay, Label),
            table::day("named_day", &Sample::namedDay, Label),
            table::text("sent_to", &Sample::sentTo, Label),
            table::text("named_by", &Sample::namedBy, Label),
            table::text("named_as", &Sample::namedAs, Label),
            table::integer("pest", &Sample::pest, "moths", 0, mostMoths),
        }};
    return kind;
}

Uuid visitId(const Uuid& programme, const Uuid& trap, LocalDay day)
{
    const std::array parts{formatUuid(programme), std::string("visit"), formatUuid(trap), formatDay(day)};
    return uuidFromName(parts);
}

} // namespace duskrow::domain
