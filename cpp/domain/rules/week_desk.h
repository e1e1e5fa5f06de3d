// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "domain/records/visit.h"
#include "domain/rules/season_week.h"

namespace duskrow::domain {

// What a desk knows of a trap when it asks who has reported.
struct TrapOfDesk {
    Uuid trap;
    Uuid district; // nil for none
    std::optional<LocalDay> setDay; // nothing: it stood from the first day
    std::optional<LocalDay> endDay;
};

struct VisitOfDesk {
    Uuid visit;
    Uuid trap;
    LocalDay day;
    std::optional<Moths> pest; // as counted; nothing when it could not be counted
    std::optional<ReportedHow> how; // typed at a desk
};

// How a trap stands in one week. Counted, could not be counted and nothing at all are three things.
enum class WeekStanding { Counted, NotCounted, Awaited, Late };

struct TrapWeek {
    std::size_t trap = 0; // its place among the traps
    WeekStanding standing = WeekStanding::Awaited;
    std::optional<std::size_t> visit = {}; // the last count of the week, else its last visit: its place
    std::size_t visits = 0; // in the week
};

struct Reported {
    std::size_t expected = 0;
    std::size_t reported = 0; // counted or not: somebody was there and said so
    std::size_t notCounted = 0; // of these, without a count
    std::size_t late = 0;

    bool operator==(const Reported&) const = default;
};

struct DistrictReported {
    Uuid district; // nil for the traps of none
    Reported sum;
};

struct WeekDesk {
    ReportingWeek week;
    std::vector<TrapWeek> traps; // that are expected, in the order given
    std::vector<DistrictReported> districts; // by id, the traps of none first
    Reported total;
};

// The week that a desk opens on: the last one whose count day has come.
ReportingWeek weekToSettle(LocalDay today, const SeasonWeek& week);

// Who has reported for a week. A trap is expected when it stood on the count day, as due dates count it (a
// set-up within the grace before a count day answers it), or when somebody reported for it anyway. One of
// which nothing came is late when the last day of grace is over.
//
// traps   in the order of their ids
// visits  of any days, by trap; what is withdrawn or has no day is not among them
WeekDesk weekDesk(std::span<const TrapOfDesk> traps, std::span<const VisitOfDesk> visits,
    const SeasonWeek& rhythm, ReportingWeek week, LocalDay today);

} // namespace duskrow::domain
