// SPDX-License-Identifier: MIT
#include "domain/rules/threshold.h"

#include <algorithm>
#include <cmath>

namespace duskrow::domain {

namespace {

bool isBlank(const std::string& typed)
{
    return typed.find_first_not_of(" \t") == std::string::npos;
}

// Where a value lies against a range, both in the unit typed.
int compared(double value, double from, double to, bool isRounded)
{
    if (isRounded) {
        value = std::round(value);
        from = std::round(from);
        to = std::round(to);
    }
    return value < from ? -1 : value > to ? 1 : 0;
}

void addRangeNotes(std::vector<ThresholdNote>& notes, const ThresholdRule& rule, const Threshold& threshold)
{
    const Currency currency = threshold.cost.unit.currency;
    if (rule.publishedCurrency.value.value_or(currency) != currency) {
        notes.push_back(ThresholdNote::OtherCurrency);
    } else {
        const Published ranges = comparedToPublished(rule, threshold.costPerAcre, threshold.cost.unit.per,
            threshold.pricePerBushel, threshold.price.unit.per);
        if (ranges.price < 0) notes.push_back(ThresholdNote::PriceBelowPublished);
        if (ranges.price > 0) notes.push_back(ThresholdNote::PriceAbovePublished);
        if (ranges.cost < 0) notes.push_back(ThresholdNote::CostBelowPublished);
        if (ranges.cost > 0) notes.push_back(ThresholdNote::CostAbovePublished);
    }
    if (rule.publishedLarvae.from) {
        const int place = compared(threshold.larvae.value(), rule.publishedLarvae.from->value(),
            rule.publishedLarvae.to->value(), true);
        if (place < 0) notes.push_back(ThresholdNote::LarvaeBelowPublished);
        if (place > 0) notes.push_back(ThresholdNote::LarvaeAbovePublished);
    }
}

std::vector<ThresholdNote> notesOf(
    const Protocol& protocol, const ThresholdRule& rule, const Threshold& threshold)
{
    std::vector<ThresholdNote> notes;
    addRangeNotes(notes, rule, threshold);
    if (threshold.drySeasonDivisor) {
        notes.push_back(ThresholdNote::DrySeason);
        if (threshold.drySeasonDivisor != rule.drySeasonDivisor.value)
            notes.push_back(ThresholdNote::DivisorNotPublished);
    }
    const double byFormula = threshold.usualSeason.value() / threshold.drySeasonDivisor.value_or(1.0);
    if (rule.floor.value && byFormula <= rule.floor.value->value()) notes.push_back(ThresholdNote::AtFloor);
    if (!protocol.scouting || protocol.scouting->frame.value != threshold.frame)
        notes.push_back(ThresholdNote::FrameNotPublished);
    return notes;
}

Result<SquareMetres> frameOf(const Protocol& protocol, const std::string& typed)
{
    if (!isBlank(typed)) {
        const auto area = parseDecimal(typed, "frame_m2", 0.01, 10.0);
        if (!area) return area.error();
        return SquareMetres{*area};
    }
    if (protocol.scouting && protocol.scouting->frame.value) return *protocol.scouting->frame.value;
    return Error{ErrorCode::Empty, {"frame_m2"}};
}

} // namespace

Result<const ThresholdRule*> thresholdRuleFor(const Protocol& protocol, std::string_view crop)
{
    const std::string wanted = crop.empty() ? protocol.crops.front().id : std::string(crop);
    for (const ThresholdRule& rule : protocol.thresholdRules)
        if (std::find(rule.crops.begin(), rule.crops.end(), wanted) != rule.crops.end()) return &rule;
    return Error{ErrorCode::ProtocolNoThreshold, {protocol.id, wanted}};
}

Result<Threshold> thresholdOf(
    const Protocol& protocol, const ThresholdRule& rule, const ThresholdInput& input)
{
    auto cost = parseControlCost(input.cost, input.costUnit);
    if (!cost) return cost.error();
    const auto price = parseHarvestPrice(input.price, input.priceUnit);
    if (!price) return price.error();
    if (cost->unit.currency != price->unit.currency)
        return Error{ErrorCode::CurrenciesDiffer, {codeOf(cost->unit), codeOf(price->unit)}};
    const auto frame = frameOf(protocol, input.frameM2);
    if (!frame) return frame.error();
    std::optional<double> divisor;
    if (!isBlank(input.drySeasonDivisor)) {
        const auto typed = parseDecimal(input.drySeasonDivisor, "dry_season_divisor", 1.0, 5.0);
        if (!typed) return typed.error();
        divisor = *typed;
    }

    Threshold threshold;
    threshold.protocol = protocol.id;
    threshold.protocolVersion = protocol.version;
    threshold.rule = rule.id;
    threshold.cost = std::move(*cost);
    threshold.price = *price;
    threshold.lossPerLarva = rule.lossPerLarva.value.value_or(BushelsPerAcrePerLarva{});
    threshold.bushel = rule.bushel.value.value_or(Kilograms{});
    threshold.costPerAcre = threshold.cost.perAcre();
    threshold.pricePerBushel = price->perBushel(threshold.bushel);
    threshold.drySeasonDivisor = divisor;
    const double loss = threshold.lossPerLarva.value() * threshold.pricePerBushel.value();
    threshold.usualSeason = LarvaePerSquareMetre{threshold.costPerAcre.value() / loss};
    threshold.larvae =
        thresholdAt(rule, threshold.costPerAcre, threshold.pricePerBushel, divisor.value_or(1.0));
    threshold.frame = *frame;
    threshold.perFrame = LarvaePerFrame{threshold.larvae.value() * frame->value()};
    threshold.moneyPerLarva = DollarsPerAcre{loss * divisor.value_or(1.0)};
    threshold.yieldPerLarva = KilogramsPerHectare{
        threshold.lossPerLarva.value() * threshold.bushel.value() / hectaresPerAcre * divisor.value_or(1.0)};
    threshold.notes = notesOf(protocol, rule, threshold);
    threshold.working = workingOf(threshold, rule);
    return threshold;
}

LarvaePerSquareMetre thresholdAt(
    const ThresholdRule& rule, DollarsPerAcre cost, DollarsPerBushel price, double divisor)
{
    const double loss = rule.lossPerLarva.value.value_or(BushelsPerAcrePerLarva{}).value() * price.value();
    const LarvaePerSquareMetre byFormula{cost.value() / loss / divisor};
    return std::max(byFormula, rule.floor.value.value_or(LarvaePerSquareMetre{0.0}));
}

Published comparedToPublished(const ThresholdRule& rule, DollarsPerAcre cost, LandUnit land,
    DollarsPerBushel price, HarvestUnit harvest)
{
    Published places;
    if (rule.publishedCost.from)
        places.cost = compared(inUnit(cost, land), inUnit(*rule.publishedCost.from, land),
            inUnit(*rule.publishedCost.to, land), land == LandUnit::Hectare);
    if (rule.publishedPrice.from) {
        const Kilograms bushel = rule.bushel.value.value_or(Kilograms{});
        places.price =
            compared(inUnit(price, harvest, bushel), inUnit(*rule.publishedPrice.from, harvest, bushel),
                inUnit(*rule.publishedPrice.to, harvest, bushel), harvest == HarvestUnit::Tonne);
    }
    return places;
}

} // namespace duskrow::domain
