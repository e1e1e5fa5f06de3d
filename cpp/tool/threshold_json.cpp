// SPDX-License-Identifier: MIT
#include "tool/threshold_json.h"

#include <array>
#include <nlohmann/json.hpp>

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

// Each in the order of its enum.
constexpr std::array noteCodes{"price_below_published", "price_above_published", "cost_below_published",
    "cost_above_published", "larvae_below_published", "larvae_above_published", "other_currency",
    "dry_season", "divisor_not_published", "at_floor", "frame_not_published"};
constexpr std::array whatCodes{"sum_cost", "cost_per_acre", "price_per_bushel", "loss_per_larva",
    "usual_season", "dry_season", "floor", "per_frame"};
constexpr std::array signCodes{"begin", "plus", "times", "divided_by", "at_least"};
constexpr std::array unitCodes{"dollars_per_ac", "dollars_per_ha", "dollars_per_bu", "dollars_per_t",
    "ha_per_ac", "t_per_bu", "bu_per_ac_per_larva_m2", "dollars_per_ac_per_larva_m2", "larvae_per_m2",
    "larvae_per_frame", "m2_per_frame", "number"};

template <typename Enum, std::size_t N>
const char* codeOfEnum(const std::array<const char*, N>& codes, Enum value)
{
    return codes.at(static_cast<std::size_t>(value));
}

Json citation(const Protocol& protocol, const std::string& source)
{
    const std::string* found = protocol.citation(source);
    return found ? Json(*found) : Json(source);
}

Json amountJson(double amount, const std::string& unit)
{
    return {{"amount", amount}, {"unit", unit}};
}

Json workingJson(const std::vector<WorkingStep>& steps)
{
    Json list = Json::array();
    for (const WorkingStep& step : steps) {
        Json terms = Json::array();
        for (const WorkingTerm& term : step.terms)
            terms.push_back({{"sign", codeOfEnum(signCodes, term.sign)}, {"value", term.value},
                {"unit", codeOfEnum(unitCodes, term.unit)}});
        list.push_back({{"what", codeOfEnum(whatCodes, step.what)}, {"terms", std::move(terms)},
            {"result", step.result}, {"unit", codeOfEnum(unitCodes, step.unit)}});
    }
    return list;
}

Json tableJson(const ThresholdTable& table, const Threshold& threshold)
{
    Json larvae = Json::array();
    Json published = Json::array();
    for (const auto& row : table.cells) {
        Json larvaeRow = Json::array();
        Json publishedRow = Json::array();
        for (const ThresholdCell& cell : row) {
            larvaeRow.push_back(cell.larvae.value());
            publishedRow.push_back(cell.isPublished);
        }
        larvae.push_back(std::move(larvaeRow));
        published.push_back(std::move(publishedRow));
    }
    return {{"cost_unit", codeOf(threshold.cost.unit)}, {"price_unit", codeOf(threshold.price.unit)},
        {"costs", table.costs}, {"prices", table.prices}, {"threshold_per_m2", std::move(larvae)},
        {"within_published_table", std::move(published)}};
}

Json evidenceJson(const Protocol& protocol, const ThresholdRule& rule)
{
    const auto year = [](const std::optional<std::chrono::year>& one) {
        return one ? Json(static_cast<int>(*one)) : Json();
    };
    Json evidence{{"trials_from_year", year(rule.trialYears.from)},
        {"trials_to_year", year(rule.trialYears.to)},
        {"trial_varieties", rule.trialVarieties.value ? Json(*rule.trialVarieties.value) : Json()}};
    Json findings = Json::array();
    for (const Statement& finding : rule.evidence)
        findings.push_back({{"text", finding.text.en}, {"source", citation(protocol, finding.source)}});
    evidence["findings"] = std::move(findings);
    return evidence;
}

} // namespace

std::string thresholdJson(const Protocol& protocol, const ThresholdRule& rule, const Threshold& threshold)
{
    const auto& divisor = threshold.drySeasonDivisor;
    Json json{{"protocol", threshold.protocol}, {"protocol_version", threshold.protocolVersion},
        {"rule", threshold.rule}, {"source", citation(protocol, rule.lossPerLarva.source)},
        {"threshold_per_m2", threshold.larvae.value()}, {"threshold_per_frame", threshold.perFrame.value()},
        {"frame_m2", threshold.frame.value()},
        {"usual_season_threshold_per_m2", threshold.usualSeason.value()},
        {"dry_season_divisor", divisor ? Json(*divisor) : Json()},
        {"published_dry_season_divisor",
            rule.drySeasonDivisor.value ? Json(*rule.drySeasonDivisor.value) : Json()},
        {"coefficient_bu_per_ac_per_larva", threshold.lossPerLarva.value()},
        {"bushel_kg", threshold.bushel.value()},
        {"cost", amountJson(threshold.cost.amount, codeOf(threshold.cost.unit))},
        {"price", amountJson(threshold.price.amount, codeOf(threshold.price.unit))},
        {"currency", codeOf(threshold.cost.unit.currency)},
        {"cost_dollars_per_ac", threshold.costPerAcre.value()},
        {"price_dollars_per_bu", threshold.pricePerBushel.value()},
        {"loss_dollars_per_ac_per_larva_m2", threshold.moneyPerLarva.value()},
        {"loss_dollars_per_ha_per_larva_m2", toDollarsPerHectare(threshold.moneyPerLarva).value()},
        {"yield_loss_kg_per_ha_per_larva_m2", threshold.yieldPerLarva.value()}};
    Json notes = Json::array();
    for (const ThresholdNote note : threshold.notes) notes.push_back(codeOfEnum(noteCodes, note));
    json["notes"] = std::move(notes);
    json["working"] = workingJson(threshold.working);
    json["table"] = tableJson(thresholdTable(rule, threshold), threshold);
    json["evidence"] = evidenceJson(protocol, rule);
    Json cautions = Json::array();
    for (const Statement& caution : protocol.cautionsAt(CautionPlace::Decision))
        cautions.push_back(caution.text.en);
    json["cautions"] = std::move(cautions);
    return json.dump(2, ' ', false, Json::error_handler_t::replace);
}

} // namespace duskrow::tool
