// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "domain/base/units.h"
#include "domain/protocol/figure.h"
#include "domain/protocol/protocol_units.h"

// What can be said of one trap before its season is whole. None of it decides a spray: it says when to look.
namespace duskrow::domain {

// A number belongs to the highest step that it reaches.
struct RuleStep {
    std::string id;
    LocalText name;
    double from = 0;
    bool isOver = false; // more than `from`; else `from` itself belongs to it
    std::optional<std::chrono::days> betweenSprays = {}; // where the source gives an interval
    std::string source;
    Statement meaning; // its `id` is empty
};

// steps rise from a first one at 0
using RuleSteps = std::vector<RuleStep>;

struct TrapRuleHead {
    std::string id;
    LocalText name; // where and for what it was published
    std::vector<std::string> trapTypes; // it holds for these and for no other
    std::vector<Statement> reading;
};

// The catch of the season so far.
struct SumSoFarRule {
    TrapRuleHead head;
    RuleSteps steps;
};

// The catch of so many nights, as a mean of those counted.
struct RateRule {
    TrapRuleHead head;
    Figure<Nights> per;
    RuleSteps steps;
};

enum class Milestone { HalfOfFlight, Peak };

// The catch of the season up to a point of the flight.
struct MilestoneRule {
    TrapRuleHead head;
    Figure<Milestone> milestone;
    RuleSteps steps;
};

// A sum of warmth as it was published.
struct HeatStep {
    std::string id;
    LocalText name;
    Figure<double> sum;
    bool isFahrenheit = false;

    [[nodiscard]] std::optional<DegreeDays> inCelsius() const
    {
        if (!sum.value) return std::nullopt;
        return DegreeDays{isFahrenheit ? *sum.value * 5 / 9 : *sum.value};
    }
};

// So many moths within so many nights that follow on each other; warmth is counted from there.
struct MothsInNightsRule {
    TrapRuleHead head;
    Figure<Moths> moths;
    Figure<Nights> nights;
    std::vector<HeatStep> then; // rising; may be empty
    Statement meaning;
};

// So many moths or more on each of several visits that follow on each other.
struct VisitsInARowRule {
    TrapRuleHead head;
    Figure<Moths> moths;
    Figure<int> visits;
    Figure<Nights> apart; // nights of one visit, where the source says so
    Statement meaning;
};

using TrapRule = std::variant<SumSoFarRule, RateRule, MilestoneRule, MothsInNightsRule, VisitsInARowRule>;

inline const TrapRuleHead& headOf(const TrapRule& rule)
{
    return std::visit([](const auto& one) -> const TrapRuleHead& { return one.head; }, rule);
}

} // namespace duskrow::domain
