// SPDX-License-Identifier: MIT
#include "domain/rules/field_rule_results.h"

#include <algorithm>
#include <cassert>
#include <limits>

namespace duskrow::domain {

namespace {

double shareOf(const PlantsLookedAt& looked)
{
    assert(looked.plants > 0);
    return 100.0 * static_cast<double>(looked.withFind) / static_cast<double>(looked.plants);
}

double areaOf(const LarvaePerAreaRule& rule)
{
    return rule.area.value == AreaUnit::SquareFoot ? squareMetresInSquareFoot : 1.0;
}

} // namespace

Against against(double value, std::optional<double> from, std::optional<double> to)
{
    if (!from || !to) return Against::Unknown;
    if (value >= *to) return Against::Over;
    return value >= *from ? Against::Within : Against::Below;
}

Percent plantShare(const PlantShareRule& rule, std::span<const PlantsLookedAt> visits)
{
    assert(!visits.empty());
    if (!rule.isSummedOverVisits.value.value_or(false)) return Percent{shareOf(visits.back())};
    double sum = 0;
    for (const PlantsLookedAt& visit : visits) sum += shareOf(visit);
    return Percent{sum};
}

Against against(const PlantShareRule& rule, Percent share)
{
    const auto bare = [](const std::optional<Percent>& end) {
        return end ? std::optional(end->value()) : std::nullopt;
    };
    return against(share.value(), bare(rule.threshold.from), bare(rule.threshold.to));
}

LarvaePerSquareMetre countedLarvae(
    const LarvaePerAreaRule& rule, std::span<const LarvaFound> larvae, SquareMetres area)
{
    assert(area > SquareMetres{0});
    const auto counts = [&](const LarvaFound& larva) {
        const bool isShort = !rule.longestCounted.value || larva.length <= *rule.longestCounted.value;
        return isShort && !(larva.isParasitised && rule.isWithoutParasitised.value.value_or(false));
    };
    const auto counted = std::count_if(larvae.begin(), larvae.end(), counts);
    return LarvaePerSquareMetre{static_cast<double>(counted) / area.value()};
}

Range<LarvaePerSquareMetre> perSquareMetre(const LarvaePerAreaRule& rule)
{
    Range<LarvaePerSquareMetre> range{{}, {}, rule.larvae.source, rule.larvae.note};
    if (!rule.larvae.from || !rule.larvae.to || !rule.area.value) return range;
    range.from = LarvaePerSquareMetre{*rule.larvae.from / areaOf(rule)};
    range.to = LarvaePerSquareMetre{*rule.larvae.to / areaOf(rule)};
    return range;
}

Against against(const LarvaePerAreaRule& rule, LarvaePerSquareMetre density)
{
    const auto range = perSquareMetre(rule);
    if (!range.from) return Against::Unknown;
    return against(density.value(), range.from->value(), range.to->value());
}

BenefitCost benefitCost(const BenefitCostRule& rule, const BenefitCostAsked& asked)
{
    const double perFound = rule.borersPerFound.value.value_or(0);
    const double lossPerBorer = rule.lossPerBorer.value.value_or(0);
    const double controlled = rule.controlled.value.value_or(0);
    const double price = asked.price.value();
    assert(perFound > 0 && lossPerBorer > 0 && controlled > 0);
    assert(asked.bushelsPerAcre > 0 && price > 0 && asked.cost > DollarsPerAcre{0});
    BenefitCost sheet;
    sheet.borersPerPlant = asked.foundPerPlant * perFound;
    sheet.lossShare = sheet.borersPerPlant * lossPerBorer;
    sheet.bushelsLost = sheet.lossShare * asked.bushelsPerAcre;
    sheet.loss = DollarsPerAcre{sheet.bushelsLost * price};
    sheet.saved = DollarsPerAcre{sheet.loss.value() * controlled};
    sheet.gain = sheet.saved.value() - asked.cost.value();
    sheet.costOverSaved = sheet.saved > DollarsPerAcre{0} ? asked.cost.value() / sheet.saved.value()
                                                          : std::numeric_limits<double>::infinity();
    sheet.breakEvenBorers = asked.cost.value() / (lossPerBorer * asked.bushelsPerAcre * price * controlled);
    sheet.breakEvenFound = sheet.breakEvenBorers / perFound;
    return sheet;
}

} // namespace duskrow::domain
