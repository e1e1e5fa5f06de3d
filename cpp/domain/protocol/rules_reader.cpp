// SPDX-License-Identifier: MIT
#include "domain/protocol/rule_parts.h"
#include "domain/protocol/section_readers.h"

namespace duskrow::domain {

namespace {

// A choice that has but one answer so far: the file must say it, so that no reader has to guess.
Figure<std::string> readOnly(
    Reading& reading, const LocatedJson& rule, std::string_view key, std::string_view only)
{
    Figure<std::string> figure = reading.figure<std::string>(rule, key);
    if (figure.value != only) reading.refuse(rule, key, inQuotes(key) + " must be " + inQuotes(only));
    return figure;
}

CatchRule readCatchRule(Reading& reading, const LocatedJson& node, const Protocol& protocol)
{
    CatchRule rule;
    rule.id = reading.id(node);
    rule.trapTypes = readReferences(reading, node, "trap_types", protocol.trapTypes);
    for (const CatchRule& other : protocol.catchRules)
        for (const std::string& type : other.trapTypes)
            if (std::find(rule.trapTypes.begin(), rule.trapTypes.end(), type) != rule.trapTypes.end())
                reading.refuse(node, "the trap type " + inQuotes(type) + " has bands already");
    readOnly(reading, node, "per", "trap");
    const Figure<std::string> edge = readOnly(reading, node, "on_an_edge", "higher_band");
    rule.edgeSource = edge.source;
    rule.edgeNote = edge.note;
    const auto& bands = reading.identified(node, "bands");
    for (const LocatedJson& band : bands) {
        rule.bands.push_back(
            {reading.id(band), static_cast<int>(rule.bands.size()) + 1, reading.localText(band, "name"),
                reading.value<Moths>(band, "from_moths"), reading.optionalValue<Moths>(band, "below_moths"),
                reading.sourceOf(band), reading.statement(reading.object(band, "meaning"))});
    }
    if (bands.empty()) reading.refuse(node, "there is no band");
    checkSteps(reading, bands, "from_moths", "below_moths");
    rule.reading = reading.statementsIfAny(node, "reading");
    return rule;
}

ControlWindow readControl(Reading& reading, const LocatedJson& node)
{
    ControlWindow control;
    control.stage = reading.rangeIfAny<BbchStage>(node, "stage_bbch");
    control.largeLarvae = reading.figureIfAny<Percent>(node, "large_larvae_percent");
    control.beReady = reading.figureIfAny<Millimetres>(node, "be_ready_mm");
    control.decideBeforePodDamage = reading.figureIfAny<Percent>(node, "decide_before_pod_damage_percent");
    control.gradeLossFromPodDamage = reading.figureIfAny<Percent>(node, "grade_loss_from_pod_damage_percent");
    control.lookAgain = reading.rangeIfAny<std::chrono::days>(node, "look_again_days");
    for (const auto& [key, share] : {std::pair("large_larvae_percent", control.largeLarvae.value),
             std::pair("decide_before_pod_damage_percent", control.decideBeforePodDamage.value),
             std::pair("grade_loss_from_pod_damage_percent", control.gradeLossFromPodDamage.value)})
        if (share && (share->value() <= 0 || share->value() > 100))
            reading.refuse(node, key, "a share is more than 0 and at most 100 percent");
    return control;
}

ThresholdRule readThresholdRule(Reading& reading, const LocatedJson& node, const Protocol& protocol)
{
    ThresholdRule rule;
    rule.id = reading.id(node);
    rule.crops = readReferences(reading, node, "crops", protocol.crops);
    rule.lossPerLarva = reading.figure<BushelsPerAcrePerLarva>(node, "loss_bu_per_ac_per_larva_m2");
    rule.bushel = reading.figure<Kilograms>(node, "bushel_kg");
    rule.drySeasonDivisor = reading.figureIfAny<double>(node, "dry_season_divisor");
    rule.publishedPrice = reading.rangeIfAny<DollarsPerBushel>(node, "published_price_dollars_per_bu");
    rule.publishedCost = reading.rangeIfAny<DollarsPerAcre>(node, "published_cost_dollars_per_ac");
    rule.publishedLarvae = reading.rangeIfAny<LarvaePerSquareMetre>(node, "published_larvae_per_m2");
    rule.publishedCurrency = reading.figureIfAny<Currency>(node, "published_currency");
    rule.trialYears = reading.rangeIfAny<std::chrono::year>(node, "trial_years");
    rule.trialVarieties = reading.figureIfAny<int>(node, "trial_varieties");
    rule.floor = reading.figure<LarvaePerSquareMetre>(node, "floor_larvae_per_m2");
    rule.evidence = reading.statementsIfAny(node, "evidence");
    rule.timing = reading.statementsIfAny(node, "timing");
    if (node.find("control")) rule.control = readControl(reading, reading.object(node, "control"));
    // Each of these is divided by.
    if (rule.lossPerLarva.value.value_or(BushelsPerAcrePerLarva{0}).value() <= 0)
        reading.refuse(
            node, "loss_bu_per_ac_per_larva_m2", "the loss for each larva must be known and more than 0");
    if (rule.bushel.value.value_or(Kilograms{0}).value() <= 0)
        reading.refuse(node, "bushel_kg", "the weight of a bushel must be known and more than 0");
    if (rule.drySeasonDivisor.value.value_or(1) < 1)
        reading.refuse(
            node, "dry_season_divisor", "a dry season lowers the threshold: its divisor is 1 or more");
    return rule;
}

} // namespace

void readRules(Reading& reading, const LocatedJson& file, Protocol& protocol)
{
    if (file.find("season_bands")) {
        const Figure<std::string> bands = reading.figure<std::string>(file, "season_bands");
        if (bands.value)
            reading.refuse(file, "season_bands", "bands stand under \"rules\"; this says why not");
        protocol.noBands = bands.note;
    }
    for (const LocatedJson& node : reading.identified(file, "rules")) {
        const std::string shape = reading.text(node, "shape");
        if (shape == "cumulative_catch")
            protocol.catchRules.push_back(readCatchRule(reading, node, protocol));
        else if (shape == "linear_cost_over_price")
            protocol.thresholdRules.push_back(readThresholdRule(reading, node, protocol));
        else if (!readTrapRule(reading, node, shape, protocol)
            && !readFieldRule(reading, node, shape, protocol))
            protocol.unknownRules.push_back({reading.id(node), shape});
    }
}

void checkSteps(Reading& reading, const std::vector<LocatedJson>& steps, std::string_view fromKey,
    std::string_view belowKey)
{
    std::int64_t expected = 0;
    const LocatedJson* open = nullptr;
    for (const LocatedJson& step : steps) {
        const LocatedJson* from = step.find(fromKey);
        const LocatedJson* below = step.find(belowKey);
        if (!from || !below) return; // told already
        if (open) return reading.refuse(*open, "nothing can follow a step that is open at the top");
        if (from->whole != expected)
            return reading.refuse(*from,
                inQuotes(fromKey) + " must be " + std::to_string(expected)
                    + ": steps rise from 0 and each begins where the last one ends");
        if (below->kind == LocatedJson::Kind::Null) {
            open = below;
            continue;
        }
        if (below->whole <= from->whole)
            return reading.refuse(*below, inQuotes(belowKey) + " must be more than " + inQuotes(fromKey));
        expected = below->whole;
    }
    if (!open && !steps.empty())
        reading.refuse(
            steps.back(), belowKey, "the last step is open at the top: " + inQuotes(belowKey) + " is null");
}

} // namespace duskrow::domain
