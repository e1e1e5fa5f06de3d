// SPDX-License-Identifier: MIT
#include <algorithm>

#include "domain/protocol/protocol_reader.h"
#include "domain/rules/bands.h"
#include "domain/rules/field_rule_results.h"
#include "domain/rules/protocol_rules.h"
#include "domain/rules/rule_outcomes.h"
#include "domain/rules/season_days.h"
#include "fuzz/fuzz.h"

using namespace duskrow::domain;

namespace {

// A season of a few counts: in one night, over many, none.
TrapSeason someSeason(const Protocol& protocol, const SeasonRules& rules)
{
    Trap trap;
    trap.pest = protocol.id;
    trap.setDay = dayOf(2026, 6, 1);
    std::vector<Visit> visits;
    const auto count = [&](unsigned day, std::optional<Moths> moths) {
        Visit visit;
        visit.id.bytes[15] = static_cast<std::uint8_t>(day);
        visit.day = dayOf(2026, 6, day);
        visit.outcome = moths ? Outcome::Counted : Outcome::CouldNotCount;
        visit.pest = moths;
        visit.emptied = true;
        visits.push_back(visit);
    };
    count(2, Moths{9});
    count(3, Moths{0});
    count(10, Moths{999'999});
    count(12, std::nullopt);
    count(13, Moths{4});
    return trapSeason({trap, visits, {}, {}}, rules);
}

void useFieldRule(const PlantShareRule& rule)
{
    const std::array visits{PlantsLookedAt{100, 5}, PlantsLookedAt{1, 1}};
    (void)against(rule, plantShare(rule, visits));
}

void useFieldRule(const LarvaePerAreaRule& rule)
{
    const std::array larvae{LarvaFound{Millimetres{10}, true}, LarvaFound{Millimetres{40}}};
    (void)against(rule, countedLarvae(rule, larvae, SquareMetres{0.25}));
}

void useFieldRule(const BenefitCostRule& rule)
{
    const BenefitCost sheet = benefitCost(rule, {0.3, 150, DollarsPerBushel{3.5}, DollarsPerAcre{15}});
    fuzz::demand(sheet.breakEvenFound >= 0);
}

// Whatever was read can be used.
void use(const Protocol& protocol)
{
    const std::chrono::year year{2026};
    const SeasonRules rules = seasonRulesOf(protocol, year, std::chrono::Sunday, dayOf(2026, 7, 1));
    const TrapSeason season = someSeason(protocol, rules);
    (void)seasonDaysOf(protocol.season, year);
    (void)placementRulesOf(protocol);
    for (const TrapType& type : protocol.trapTypes) {
        (void)dueRulesOf(protocol, type.id, year, {});
        if (const auto bands = bandsFor(protocol, type.id)) (void)bandOf(*bands, Moths{300});
        for (const RuleOutcome& outcome : ruleOutcomes(protocol, type.id, season))
            fuzz::demand(outcome.rule != nullptr);
    }
    for (const FieldRule& rule : protocol.fieldRules)
        std::visit([](const auto& one) { useFieldRule(one); }, rule);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto read = readProtocol(text, "f.json");
    if (read) {
        use(*read);
        return 0;
    }
    const Error& error = read.error();
    fuzz::demand(error.code == ErrorCode::ProtocolSyntax || error.code == ErrorCode::ProtocolRule);
    // The line that is named is one of the file's.
    const auto lines = 1 + std::count(text.begin(), text.end(), '\n');
    fuzz::demand(error.args.size() == 3 && !error.args[2].empty());
    const int line = std::stoi(error.args[1]);
    fuzz::demand(line >= 1 && line <= lines);
    return 0;
}
