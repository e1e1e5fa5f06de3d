// SPDX-License-Identifier: MIT
#include "domain/rules/threshold_working.h"

#include "domain/rules/threshold.h"

namespace duskrow::domain {

namespace {

using Unit = WorkingUnit;
using Sign = WorkingSign;

WorkingUnit costUnitOf(const Threshold& threshold)
{
    return threshold.cost.unit.per == LandUnit::Acre ? Unit::MoneyPerAcre : Unit::MoneyPerHectare;
}

void addCost(std::vector<WorkingStep>& steps, const Threshold& threshold)
{
    const WorkingUnit unit = costUnitOf(threshold);
    if (threshold.cost.parts.size() > 1) {
        WorkingStep sum{WorkingWhat::SumCost, {}, threshold.cost.amount, unit};
        for (const double part : threshold.cost.parts)
            sum.terms.push_back({sum.terms.empty() ? Sign::Begin : Sign::Plus, part, unit});
        steps.push_back(std::move(sum));
    }
    if (unit == Unit::MoneyPerHectare)
        steps.push_back({WorkingWhat::CostPerAcre,
            {{Sign::Begin, threshold.cost.amount, unit},
                {Sign::Times, hectaresPerAcre, Unit::AcreInHectares}},
            threshold.costPerAcre.value(), Unit::MoneyPerAcre});
}

void addPrice(std::vector<WorkingStep>& steps, const Threshold& threshold)
{
    if (threshold.price.unit.per == HarvestUnit::Bushel) return;
    steps.push_back({WorkingWhat::PricePerBushel,
        {{Sign::Begin, threshold.price.amount, Unit::MoneyPerTonne},
            {Sign::Times, threshold.bushel.value() / 1000.0, Unit::BushelInTonnes}},
        threshold.pricePerBushel.value(), Unit::MoneyPerBushel});
}

} // namespace

std::vector<WorkingStep> workingOf(const Threshold& threshold, const ThresholdRule& rule)
{
    std::vector<WorkingStep> steps;
    addCost(steps, threshold);
    addPrice(steps, threshold);
    const double loss = threshold.lossPerLarva.value() * threshold.pricePerBushel.value();
    steps.push_back({WorkingWhat::LossPerLarva,
        {{Sign::Begin, threshold.lossPerLarva.value(), Unit::YieldPerLarva},
            {Sign::Times, threshold.pricePerBushel.value(), Unit::MoneyPerBushel}},
        loss, Unit::MoneyPerLarva});
    const double usual = threshold.usualSeason.value();
    steps.push_back({WorkingWhat::UsualSeason,
        {{Sign::Begin, threshold.costPerAcre.value(), Unit::MoneyPerAcre},
            {Sign::DividedBy, loss, Unit::MoneyPerLarva}},
        usual, Unit::Density});
    double larvae = usual;
    if (threshold.drySeasonDivisor) {
        larvae = usual / *threshold.drySeasonDivisor;
        steps.push_back({WorkingWhat::DrySeason,
            {{Sign::Begin, usual, Unit::Density},
                {Sign::DividedBy, *threshold.drySeasonDivisor, Unit::Number}},
            larvae, Unit::Density});
    }
    if (rule.floor.value && larvae <= rule.floor.value->value())
        steps.push_back({WorkingWhat::Floor,
            {{Sign::Begin, larvae, Unit::Density}, {Sign::AtLeast, rule.floor.value->value(), Unit::Density}},
            threshold.larvae.value(), Unit::Density});
    steps.push_back({WorkingWhat::PerFrame,
        {{Sign::Begin, threshold.larvae.value(), Unit::Density},
            {Sign::Times, threshold.frame.value(), Unit::FrameArea}},
        threshold.perFrame.value(), Unit::CountInFrame});
    return steps;
}

} // namespace duskrow::domain
