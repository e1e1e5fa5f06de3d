// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <string_view>

#include "domain/base/time.h"
#include "domain/protocol/protocol.h"
#include "domain/rules/due.h"
#include "domain/rules/placement.h"
#include "domain/rules/season_week.h"
#include "domain/rules/trap_season.h"

namespace duskrow::domain {

// What a protocol asks of a whole season in one year. The latest set-up is its last day for setting up and
// the nights it takes at least until the first moths come; counts reach into its days for taking down.
//
// weekStart  of the programme's reporting week, which need not be the protocol's
SeasonRules seasonRulesOf(
    const Protocol& protocol, std::chrono::year year, std::chrono::weekday weekStart, LocalDay today);

// What a protocol says of the work at a trap of one type in one year. Of a range of lives the longer end
// holds, since nothing says that the shorter one is needed.
//
// trapType  an id of the protocol; for another one a strip is due where the protocol has strips at all
DueRules dueRulesOf(
    const Protocol& protocol, std::string_view trapType, std::chrono::year year, const SeasonWeek& week);

// The distances a protocol asks for, in its order. Advice without a published distance, and advice on things
// this version cannot measure, is only said and has no rule.
std::vector<PlacementRule> placementRulesOf(const Protocol& protocol);

// Which rule a protocol's advice on placement stands for, by its id.
std::optional<PlacementKind> placementKindOf(const PlacementAdvice& advice);

} // namespace duskrow::domain
