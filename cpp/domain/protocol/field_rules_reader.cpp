// SPDX-License-Identifier: MIT
#include "domain/protocol/rule_parts.h"

namespace duskrow::domain {

namespace {

FieldRuleHead readHead(Reading& reading, const LocatedJson& node, const Protocol& protocol)
{
    return {reading.id(node), reading.localText(node, "name"),
        readReferences(reading, node, "crops", protocol.crops), reading.statementsIfAny(node, "reading")};
}

PlantShareRule readPlantShare(Reading& reading, const LocatedJson& node, const Protocol& protocol)
{
    PlantShareRule rule;
    rule.head = readHead(reading, node, protocol);
    rule.threshold = reading.range<Percent>(node, "threshold_percent");
    rule.isSummedOverVisits = reading.figure<bool>(node, "summed_over_visits");
    rule.plantsPerStop = reading.figureIfAny<int>(node, "plants_per_stop");
    rule.stops = reading.figureIfAny<int>(node, "stops");
    if (rule.threshold.to.value_or(Percent{0}) > Percent{100})
        reading.refuse(node, "threshold_percent", "a share is at most 100 percent");
    return rule;
}

LarvaePerAreaRule readLarvae(Reading& reading, const LocatedJson& node, const Protocol& protocol)
{
    LarvaePerAreaRule rule;
    rule.head = readHead(reading, node, protocol);
    rule.larvae = reading.range<double>(node, "larvae");
    rule.area = reading.figure<AreaUnit>(node, "area");
    rule.longestCounted = reading.figureIfAny<Millimetres>(node, "longest_counted_mm");
    rule.isWithoutParasitised = reading.figureIfAny<bool>(node, "without_parasitised");
    return rule;
}

BenefitCostRule readBenefitCost(Reading& reading, const LocatedJson& node, const Protocol& protocol)
{
    BenefitCostRule rule;
    rule.head = readHead(reading, node, protocol);
    rule.found = reading.localText(node, "found");
    rule.borersPerFound = reading.figure<double>(node, "borers_per_found");
    rule.lossPerBorer = reading.figure<double>(node, "loss_per_borer");
    rule.controlled = reading.figure<double>(node, "controlled");
    // What control saves is the product of these; the break-even is divided by it.
    for (const auto& [key, share] : {std::pair("borers_per_found", rule.borersPerFound.value),
             std::pair("loss_per_borer", rule.lossPerBorer.value),
             std::pair("controlled", rule.controlled.value)})
        if (share.value_or(0) <= 0)
            reading.refuse(node, key, inQuotes(key) + " must be known and more than 0");
    for (const auto& [key, share] : {std::pair("loss_per_borer", rule.lossPerBorer.value),
             std::pair("controlled", rule.controlled.value)})
        if (share.value_or(0) > 1) reading.refuse(node, key, inQuotes(key) + " is a share, at most 1");
    return rule;
}

} // namespace

bool readFieldRule(Reading& reading, const LocatedJson& node, const std::string& shape, Protocol& protocol)
{
    if (shape == "percent_of_plants")
        protocol.fieldRules.push_back(readPlantShare(reading, node, protocol));
    else if (shape == "larvae_per_area")
        protocol.fieldRules.push_back(readLarvae(reading, node, protocol));
    else if (shape == "benefit_cost_sheet")
        protocol.fieldRules.push_back(readBenefitCost(reading, node, protocol));
    else
        return false;
    return true;
}

} // namespace duskrow::domain
