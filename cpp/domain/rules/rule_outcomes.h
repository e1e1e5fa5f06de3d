// SPDX-License-Identifier: MIT
#pragma once

#include "domain/rules/trap_rule_results.h"
#include "domain/rules/trap_season.h"

namespace duskrow::domain {

// What one rule comes to for the season of one trap so far. It looks on the protocol. What a shape of rule
// does not have is empty.
struct RuleOutcome {
    const TrapRule* rule = nullptr;
    bool isReached = false; // a step above the first, or what the rule waits for
    std::optional<double> value = {}; // that was held against the steps; nothing when nothing was counted
    std::optional<CatchSpan> span = {}; // of the counts it comes from
    const RuleStep* step = nullptr; // nothing while it cannot be said
    const RuleStep* highestStep = nullptr; // of rates: the highest step of the season
    std::optional<RateResult> highest = {};
    std::optional<LocalDay> milestone = {}; // the day taken for it
    WindowState window = WindowState::NotReached;
    RunResult run = {};
};

// Every rule that holds for the type of trap, in the order of the file.
std::vector<RuleOutcome> ruleOutcomes(
    const Protocol& protocol, std::string_view trapType, const TrapSeason& season);

} // namespace duskrow::domain
