// SPDX-License-Identifier: MIT
#include "domain/rules/threshold_table.h"

#include <cmath>

namespace duskrow::domain {

namespace {

constexpr int toEitherSide = 3;

// A step as a whole number over or times a power of ten, so that multiples come out exact.
struct Step {
    double digit = 1.0; // 1, 2 or 5
    int power = 0;

    [[nodiscard]] double times(double count) const
    {
        return power < 0 ? count * digit / std::pow(10.0, -power) : count * digit * std::pow(10.0, power);
    }
};

Step stepFor(double own)
{
    const double most = own / 8.0;
    Step step{1.0, static_cast<int>(std::floor(std::log10(most)))};
    for (const double digit : {2.0, 5.0})
        if (const Step larger{digit, step.power}; larger.times(1.0) <= most) step = larger;
    return step;
}

} // namespace

std::vector<double> stepsAround(double own)
{
    const Step step = stepFor(own);
    const double place = own / step.times(1.0);
    const bool isMultiple = std::abs(place - std::round(place)) < 1e-9;
    const double below = isMultiple ? std::round(place) - 1.0 : std::floor(place);
    const double above = isMultiple ? std::round(place) + 1.0 : std::ceil(place);
    std::vector<double> values;
    for (int i = toEitherSide - 1; i >= 0; --i) values.push_back(step.times(below - i));
    values.push_back(own);
    for (int i = 0; i < toEitherSide; ++i) values.push_back(step.times(above + i));
    return values;
}

ThresholdTable thresholdTable(const ThresholdRule& rule, const Threshold& threshold)
{
    ThresholdTable table{stepsAround(threshold.cost.amount), stepsAround(threshold.price.amount), {},
        toEitherSide, toEitherSide};
    const bool isComparable = rule.publishedCost.from && rule.publishedPrice.from
        && !threshold.drySeasonDivisor
        && rule.publishedCurrency.value.value_or(threshold.cost.unit.currency)
            == threshold.cost.unit.currency;
    for (const double cost : table.costs) {
        const DollarsPerAcre perAcre = ControlCost{cost, {}, threshold.cost.unit}.perAcre();
        std::vector<ThresholdCell> row;
        for (const double price : table.prices) {
            const DollarsPerBushel perBushel =
                HarvestPrice{price, threshold.price.unit}.perBushel(threshold.bushel);
            const Published place = comparedToPublished(
                rule, perAcre, threshold.cost.unit.per, perBushel, threshold.price.unit.per);
            row.push_back({thresholdAt(rule, perAcre, perBushel, threshold.drySeasonDivisor.value_or(1.0)),
                isComparable && place.cost == 0 && place.price == 0});
        }
        table.cells.push_back(std::move(row));
    }
    return table;
}

} // namespace duskrow::domain
