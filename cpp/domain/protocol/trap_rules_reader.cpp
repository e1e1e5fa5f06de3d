// SPDX-License-Identifier: MIT
#include "domain/protocol/rule_parts.h"

namespace duskrow::domain {

namespace {

TrapRuleHead readHead(Reading& reading, const LocatedJson& node, const Protocol& protocol)
{
    return {reading.id(node), reading.localText(node, "name"),
        readReferences(reading, node, "trap_types", protocol.trapTypes),
        reading.statementsIfAny(node, "reading")};
}

RuleStep readStep(Reading& reading, const LocatedJson& node)
{
    RuleStep step;
    step.id = reading.id(node);
    step.name = reading.localText(node, "name");
    step.isOver = node.find("over_moths") != nullptr;
    if (step.isOver && node.find("from_moths"))
        reading.refuse(node, "a step has \"from_moths\" or \"over_moths\", not both");
    step.from = reading.value<double>(node, step.isOver ? "over_moths" : "from_moths");
    if (node.find("days_between_sprays"))
        step.betweenSprays = reading.value<std::chrono::days>(node, "days_between_sprays");
    step.source = reading.sourceOf(node);
    step.meaning = reading.statement(reading.object(node, "meaning"));
    return step;
}

RuleSteps readSteps(Reading& reading, const LocatedJson& node)
{
    RuleSteps steps;
    for (const LocatedJson& one : reading.identified(node, "steps")) {
        RuleStep step = readStep(reading, one);
        if (steps.empty() && (step.from != 0 || step.isOver))
            reading.refuse(one, "the first step has \"from_moths\" 0");
        if (!steps.empty() && step.from <= steps.back().from)
            reading.refuse(one, "each step begins higher than the one before");
        steps.push_back(std::move(step));
    }
    if (steps.size() < 2) reading.refuse(node, "steps", "a rule of steps has two or more");
    return steps;
}

// A number that the rule divides by or counts up to.
template <typename T>
Figure<T> readNeeded(Reading& reading, const LocatedJson& node, std::string_view key)
{
    Figure<T> figure = reading.figure<T>(node, key);
    if (figure.value.value_or(T{}) == T{})
        reading.refuse(node, key, inQuotes(key) + " must be known and more than 0");
    return figure;
}

std::vector<HeatStep> readHeatSteps(Reading& reading, const LocatedJson& node)
{
    std::vector<HeatStep> steps;
    for (const LocatedJson& one : reading.identifiedIfAny(node, "then")) {
        HeatStep step;
        step.id = reading.id(one);
        step.name = reading.localText(one, "name");
        step.isFahrenheit = one.find("degree_days_f") != nullptr;
        step.sum = reading.figure<double>(one, step.isFahrenheit ? "degree_days_f" : "degree_days_c");
        if (!steps.empty() && step.inCelsius() && steps.back().inCelsius()
            && *step.inCelsius() < *steps.back().inCelsius())
            reading.refuse(one, "sums of warmth rise from one to the next");
        steps.push_back(std::move(step));
    }
    return steps;
}

} // namespace

bool readTrapRule(Reading& reading, const LocatedJson& node, const std::string& shape, Protocol& protocol)
{
    auto& rules = protocol.trapRules;
    if (shape == "catch_so_far_steps")
        rules.push_back(SumSoFarRule{readHead(reading, node, protocol), readSteps(reading, node)});
    else if (shape == "catch_rate_steps")
        rules.push_back(RateRule{readHead(reading, node, protocol),
            readNeeded<Nights>(reading, node, "per_nights"), readSteps(reading, node)});
    else if (shape == "catch_at_milestone")
        rules.push_back(MilestoneRule{readHead(reading, node, protocol),
            reading.figure<Milestone>(node, "milestone"), readSteps(reading, node)});
    else if (shape == "moths_in_nights")
        rules.push_back(MothsInNightsRule{readHead(reading, node, protocol),
            readNeeded<Moths>(reading, node, "moths"), readNeeded<Nights>(reading, node, "nights"),
            readHeatSteps(reading, node), reading.statement(reading.object(node, "meaning"))});
    else if (shape == "visits_in_a_row")
        rules.push_back(
            VisitsInARowRule{readHead(reading, node, protocol), readNeeded<Moths>(reading, node, "moths"),
                readNeeded<int>(reading, node, "visits"), reading.figureIfAny<Nights>(node, "nights_apart"),
                reading.statement(reading.object(node, "meaning"))});
    else
        return false;
    return true;
}

} // namespace duskrow::domain
