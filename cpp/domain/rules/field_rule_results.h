// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "domain/protocol/protocol.h"

// What is counted in the crop, held against the rules of a protocol. Nothing is rounded on the way.
namespace duskrow::domain {

enum class Against {
    Unknown, // nobody has published the number
    Below,
    Within, // of a range: sources or years differ
    Over, // at its upper end or more
};

// A threshold that is one number has no inside: reached is over.
Against against(double value, std::optional<double> from, std::optional<double> to);

struct PlantsLookedAt {
    std::int64_t plants = 0; // 1 or more
    std::int64_t withFind = 0;
};

// The share of plants with what is looked for: of the last visit, or the sum of all visits where the rule
// adds them up, since eggs found and hatched before are no longer there to be found.
//
// visits  in the order of their days; at least one
Percent plantShare(const PlantShareRule& rule, std::span<const PlantsLookedAt> visits);
Against against(const PlantShareRule& rule, Percent share);

struct LarvaFound {
    Millimetres length;
    bool isParasitised = false;
};

// The larvae that count, on a square metre: longer ones and parasitised ones are left out where the rule
// says so.
//
// area  searched; more than 0
LarvaePerSquareMetre countedLarvae(
    const LarvaePerAreaRule& rule, std::span<const LarvaFound> larvae, SquareMetres area);
Range<LarvaePerSquareMetre> perSquareMetre(const LarvaePerAreaRule& rule);
Against against(const LarvaePerAreaRule& rule, LarvaePerSquareMetre density);

struct BenefitCostAsked {
    double foundPerPlant = 0;
    double bushelsPerAcre = 0; // yield that is expected; more than 0
    DollarsPerBushel price; // more than 0
    DollarsPerAcre cost; // of control; more than 0
};

// One line of a benefit-cost sheet each.
struct BenefitCost {
    double borersPerPlant = 0;
    double lossShare = 0;
    double bushelsLost = 0; // per acre
    DollarsPerAcre loss = {};
    DollarsPerAcre saved = {};
    double gain = 0; // dollars per acre, below 0 where control costs more than it saves
    double costOverSaved = 0; // infinite where nothing is saved
    double breakEvenBorers = 0; // borers on a plant at which control just pays
    double breakEvenFound = 0; // as they are counted
};

BenefitCost benefitCost(const BenefitCostRule& rule, const BenefitCostAsked& asked);

} // namespace duskrow::domain
