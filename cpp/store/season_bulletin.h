// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "domain/bulletin/week_report.h"
#include "domain/protocol/protocol.h"
#include "store/queries.h"

namespace duskrow::store {

// The traps of one pest and trap type in one week of a season, and the districts that they number.
struct SeasonReports {
    std::vector<domain::WeekReport> reports; // each trap once
    std::vector<domain::Uuid> districts; // in the order of their names
    std::vector<std::string> names; // theirs
};

// The pest and trap type with the most traps of a season; of one pest where it is named.
//
// Errors  NameMissing {"pest", pest} when the season has no trap of it
struct TrapKind {
    std::string pest;
    std::string trapType;
};
domain::Result<TrapKind> mostCommonKind(
    Reader& reader, const domain::Season& season, const std::string& pest);

// Sites of one keeper, or of one landowner as it is written, are one farm's.
//
// Errors  as in queries.h; OutOfRange for a week start that is no weekday
domain::Result<SeasonReports> reportsOfWeek(Reader& reader, const domain::Season& season,
    const domain::Protocol& protocol, const TrapKind& kind, const domain::ReportingWeek& week);

} // namespace duskrow::store
