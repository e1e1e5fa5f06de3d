// SPDX-License-Identifier: MIT
#include "tool/rules_json.h"

#include "domain/rules/rule_outcomes.h"
#include "text/rule_text.h"
#include "tool/json_values.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

const char* windowCode(WindowState state)
{
    switch (state) {
    case WindowState::NotReached:
        return "not_reached";
    case WindowState::CannotTell:
        return "cannot_tell";
    case WindowState::ReachedWithin:
        return "reached_within";
    case WindowState::Reached:
        return "reached";
    }
    return "";
}

const char* shapeCode(const TrapRule& rule)
{
    constexpr std::array codes{
        "catch_so_far_steps", "catch_rate_steps", "catch_at_milestone", "moths_in_nights", "visits_in_a_row"};
    static_assert(codes.size() == std::variant_size_v<TrapRule>);
    return codes[rule.index()];
}

Json spanJson(const std::optional<CatchSpan>& span)
{
    if (!span) return {};
    return {{"from", formatDay(span->from)}, {"to", formatDay(span->to)}, {"moths", span->moths.value()},
        {"nights", span->nights().value()}};
}

Json stepJson(const RuleStep* step)
{
    if (!step) return {};
    const auto& days = step->betweenSprays;
    return {{"id", step->id}, {"name", step->name.en},
        {"days_between_sprays", days ? Json(days->count()) : Json()}};
}

Json outcomeJson(const RuleOutcome& outcome, const text::Animal& animal)
{
    const TrapRuleHead& head = headOf(*outcome.rule);
    Json json{{"id", head.id}, {"shape", shapeCode(*outcome.rule)}, {"name", head.name.en},
        {"is_reached", outcome.isReached}, {"value", outcome.value ? Json(*outcome.value) : Json()},
        {"span", spanJson(outcome.span)}, {"step", stepJson(outcome.step)}};
    if (std::holds_alternative<MothsInNightsRule>(*outcome.rule)) json["state"] = windowCode(outcome.window);
    if (std::holds_alternative<VisitsInARowRule>(*outcome.rule)) json["visits_in_a_row"] = outcome.run.atEnd;
    if (outcome.milestone) json["milestone_day"] = formatDay(*outcome.milestone);
    json["words"] = text::ruleWords(outcome, "en", QLocale::c(), animal).line().toStdString();
    return json;
}

} // namespace

Json rulesJson(const TrapResult& result)
{
    Json rules = Json::array();
    for (const RuleOutcome& outcome : ruleOutcomes(*result.protocol, result.trap->trapType, result.season))
        rules.push_back(outcomeJson(outcome, text::animalOf(result.protocol, "en")));
    return rules;
}

} // namespace duskrow::tool
