// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "domain/base/units.h"
#include "domain/protocol/figure.h"
#include "domain/protocol/protocol_units.h"

// What is counted in the crop and held against a number that somebody has published.
namespace duskrow::domain {

struct FieldRuleHead {
    std::string id;
    LocalText name; // where and for what it was published
    std::vector<std::string> crops;
    std::vector<Statement> reading;
};

// Share of the plants looked at that bear what is looked for, of one visit or added over several.
struct PlantShareRule {
    FieldRuleHead head;
    Range<Percent> threshold;
    Figure<bool> isSummedOverVisits;
    Figure<int> plantsPerStop;
    Figure<int> stops;
};

enum class AreaUnit { SquareMetre, SquareFoot };

inline constexpr double squareMetresInSquareFoot = 0.09290304; // exact: the foot is 0.3048 m

// Larvae on an area, as it was published.
struct LarvaePerAreaRule {
    FieldRuleHead head;
    Range<double> larvae;
    Figure<AreaUnit> area;
    Figure<Millimetres> longestCounted; // longer ones are no longer counted
    Figure<bool> isWithoutParasitised;
};

// What control saves on one acre against what it costs, from what was found on a plant.
struct BenefitCostRule {
    FieldRuleHead head;
    LocalText found; // what is counted: egg masses, larvae
    Figure<double> borersPerFound; // that come to bore: a share of larvae, a number for an egg mass
    Figure<double> lossPerBorer; // share of the yield, of one borer on a plant
    Figure<double> controlled; // share of the borers, 0 to 1
};

using FieldRule = std::variant<PlantShareRule, LarvaePerAreaRule, BenefitCostRule>;

inline const FieldRuleHead& headOf(const FieldRule& rule)
{
    return std::visit([](const auto& one) -> const FieldRuleHead& { return one.head; }, rule);
}

} // namespace duskrow::domain
