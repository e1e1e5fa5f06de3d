// SPDX-License-Identifier: MIT
#include "domain/rules/rule_outcomes.h"

namespace duskrow::domain {

namespace {

bool isAbove(const RuleStep* step, const RuleSteps& steps)
{
    return step && step != &steps.front();
}

class Weighing {
public:
    Weighing(const TrapRule& rule, const TrapSeason& season) : m_season(season) { m_outcome.rule = &rule; }

    RuleOutcome made()
    {
        std::visit([this](const auto& rule) { take(rule); }, *m_outcome.rule);
        return m_outcome;
    }

private:
    [[nodiscard]] bool isCounted() const { return m_season.countedUntil.has_value(); }

    void take(const SumSoFarRule& rule)
    {
        if (!isCounted()) return;
        m_outcome.value = static_cast<double>(m_season.total.value());
        m_outcome.step = &stepOf(rule.steps, *m_outcome.value);
        m_outcome.isReached = isAbove(m_outcome.step, rule.steps);
    }

    void take(const RateRule& rule)
    {
        const Rates rates = catchRates(m_season.steps, *rule.per.value);
        if (!rates.last) return;
        m_outcome.value = rates.last->catchPer;
        m_outcome.span = rates.last->span;
        m_outcome.highest = rates.highest;
        m_outcome.step = &stepOf(rule.steps, *m_outcome.value);
        m_outcome.highestStep = &stepOf(rule.steps, rates.highest->catchPer);
        m_outcome.isReached = isAbove(m_outcome.highestStep, rule.steps);
    }

    void take(const MilestoneRule& rule)
    {
        if (!isCounted()) return;
        const Flight& flight = m_season.flight;
        // When half of the flight has passed cannot be told from one trap; its peak can, once it is past.
        if (rule.milestone.value == Milestone::Peak && flight.phase == FlightPhase::PastHighest
            && flight.highest)
            m_outcome.milestone = flight.highest->middle();
        m_outcome.value = static_cast<double>(m_season.total.value());
        if (!m_outcome.milestone) return;
        const SumUpTo sum = sumUpTo(m_season.steps, *m_outcome.milestone);
        m_outcome.value = static_cast<double>(sum.most.value());
        // With the count over that day: the higher step where it makes the difference.
        m_outcome.step = &stepOf(rule.steps, *m_outcome.value);
        m_outcome.isReached = isAbove(m_outcome.step, rule.steps);
    }

    void take(const MothsInNightsRule& rule)
    {
        const WindowResult result = mothsInNights(m_season.steps, *rule.moths.value, *rule.nights.value);
        m_outcome.window = result.state;
        m_outcome.span = result.span;
        m_outcome.isReached = result.state >= WindowState::ReachedWithin;
    }

    void take(const VisitsInARowRule& rule)
    {
        m_outcome.run = visitsInARow(m_season.steps, *rule.moths.value, *rule.visits.value, rule.apart.value);
        m_outcome.span = m_outcome.run.reached;
        m_outcome.isReached = m_outcome.run.reached.has_value();
    }

    const TrapSeason& m_season;
    RuleOutcome m_outcome;
};

} // namespace

std::vector<RuleOutcome> ruleOutcomes(
    const Protocol& protocol, std::string_view trapType, const TrapSeason& season)
{
    std::vector<RuleOutcome> outcomes;
    for (const TrapRule* rule : trapRulesFor(protocol, trapType))
        outcomes.push_back(Weighing(*rule, season).made());
    return outcomes;
}

} // namespace duskrow::domain
