// SPDX-License-Identifier: MIT
#include "domain/rules/control_decision.h"

#include <algorithm>

namespace duskrow::domain {

namespace {

using Density = LarvaePerSquareMetre;

ControlVerdict verdictOf(FramesVerdict frames)
{
    switch (frames) {
    case FramesVerdict::Below:
        return ControlVerdict::Below;
    case FramesVerdict::Above:
        return ControlVerdict::Above;
    case FramesVerdict::TooCloseToCall:
    case FramesVerdict::NotEnoughFrames:
        break;
    }
    return ControlVerdict::TooCloseToCall;
}

NextStep nextWhenAbove(Timing timing)
{
    switch (timing) {
    case Timing::TooEarly:
        return NextStep::LookAgain;
    case Timing::InWindow:
        return NextStep::ControlPays;
    case Timing::TooLate:
        return NextStep::TooLate;
    case Timing::NotKnown:
        break;
    }
    return NextStep::SayTiming;
}

NextStep nextStep(const FramesFinding& frames, Timing timing)
{
    const ControlVerdict verdict = verdictOf(frames.verdict);
    if (verdict == ControlVerdict::Below) return NextStep::LeaveAlone;
    if (verdict == ControlVerdict::Above) return nextWhenAbove(timing);
    if (timing == Timing::TooLate) return NextStep::TooLate; // searching on would change nothing
    const bool isMoreAsked = frames.moreFrames && frames.moreFrames->value() > 0;
    const bool wantsFrames = isMoreAsked || frames.verdict == FramesVerdict::NotEnoughFrames;
    return wantsFrames ? NextStep::SearchMoreFrames : NextStep::LookAgain;
}

DecisionReason timingReason(Timing timing)
{
    switch (timing) {
    case Timing::TooEarly:
        return DecisionReason::TimingEarly;
    case Timing::InWindow:
        return DecisionReason::TimingFits;
    case Timing::TooLate:
        return DecisionReason::TimingLate;
    case Timing::NotKnown:
        break;
    }
    return DecisionReason::TimingNotKnown;
}

void addLarvaeReason(std::vector<DecisionFinding>& reasons, const FramesFinding& frames, Density threshold)
{
    const double limit = threshold.value();
    if (frames.verdict == FramesVerdict::NotEnoughFrames)
        reasons.push_back({DecisionReason::FewFrames, {static_cast<double>(frames.frames.value())}});
    if (frames.verdict == FramesVerdict::Below && frames.mean)
        reasons.push_back({DecisionReason::MeanBelow, {frames.mean->value(), limit}});
    if (frames.verdict == FramesVerdict::Above && frames.mean)
        reasons.push_back({DecisionReason::MeanAbove, {frames.mean->value(), limit}});
    if (frames.low && frames.high && *frames.low <= threshold && threshold <= *frames.high)
        reasons.push_back(
            {DecisionReason::RangeHoldsThreshold, {frames.low->value(), frames.high->value(), limit}});
    if (frames.probabilityAbove)
        reasons.push_back({DecisionReason::ProbabilityAbove, {100.0 * *frames.probabilityAbove}});
}

void addThreshold(std::vector<DecisionFinding>& reasons, const Threshold& threshold)
{
    if (threshold.drySeasonDivisor)
        reasons.push_back({DecisionReason::DrySeason, {*threshold.drySeasonDivisor}});
    const auto holds = [&](std::initializer_list<ThresholdNote> wanted) {
        return std::find_first_of(
                   threshold.notes.begin(), threshold.notes.end(), wanted.begin(), wanted.end())
            != threshold.notes.end();
    };
    if (holds({ThresholdNote::AtFloor}))
        reasons.push_back({DecisionReason::AtFloor, {threshold.larvae.value()}});
    if (holds({ThresholdNote::PriceBelowPublished, ThresholdNote::PriceAbovePublished,
            ThresholdNote::CostBelowPublished, ThresholdNote::CostAbovePublished,
            ThresholdNote::LarvaeBelowPublished, ThresholdNote::LarvaeAbovePublished,
            ThresholdNote::OtherCurrency, ThresholdNote::DivisorNotPublished}))
        reasons.push_back({DecisionReason::OutsidePublished});
}

// Looks for the money that brings the threshold to a density.
class Money {
public:
    Money(const ThresholdRule& rule, const Threshold& threshold) : m_rule(rule), m_threshold(threshold) { }

    // The threshold would fall to the density or below.
    void addPays(std::vector<DecisionChange>& changes, Density density) const
    {
        if (m_rule.floor.value && density <= *m_rule.floor.value) return;
        add(changes, density, ChangeWhat::PriceAbove, ChangeWhat::CostBelow);
    }

    // It would rise to the density or above.
    void addDoesNotPay(std::vector<DecisionChange>& changes, Density density) const
    {
        add(changes, density, ChangeWhat::PriceBelow, ChangeWhat::CostAbove);
    }

private:
    void add(std::vector<DecisionChange>& changes, Density density, ChangeWhat price, ChangeWhat cost) const
    {
        if (!(density.value() > 0.0)) return;
        const double yield = m_threshold.lossPerLarva.value() * m_threshold.drySeasonDivisor.value_or(1.0)
            * density.value(); // bushels per acre lost to so many
        const DollarsPerBushel atPrice{m_threshold.costPerAcre.value() / yield};
        const DollarsPerAcre atCost{m_threshold.pricePerBushel.value() * yield};
        const HarvestPrice asPrice{
            inUnit(atPrice, m_threshold.price.unit.per, m_threshold.bushel), m_threshold.price.unit};
        const ControlCost asCost{inUnit(atCost, m_threshold.cost.unit.per), {}, m_threshold.cost.unit};
        if (isSensible(asPrice)) changes.push_back({price, {asPrice.amount}});
        if (isSensible(asCost)) changes.push_back({cost, {asCost.amount}});
    }

    const ThresholdRule& m_rule;
    const Threshold& m_threshold;
};

void addMoney(std::vector<DecisionChange>& changes, const ThresholdRule& rule, const Threshold& threshold,
    const FramesFinding& frames)
{
    const Money money(rule, threshold);
    if (frames.verdict == FramesVerdict::Below && frames.mean) money.addPays(changes, *frames.mean);
    if (frames.verdict == FramesVerdict::Above && frames.mean) money.addDoesNotPay(changes, *frames.mean);
    if (frames.verdict != FramesVerdict::TooCloseToCall || !frames.low || !frames.high) return;
    money.addPays(changes, *frames.low);
    money.addDoesNotPay(changes, *frames.high);
}

void addDrySeason(std::vector<DecisionChange>& changes, const ThresholdRule& rule, const Threshold& threshold,
    const FramesFinding& frames)
{
    if (!frames.mean) return;
    const auto with = [&](double divisor) {
        return thresholdAt(rule, threshold.costPerAcre, threshold.pricePerBushel, divisor);
    };
    if (frames.verdict == FramesVerdict::Below && !threshold.drySeasonDivisor
        && rule.drySeasonDivisor.value) {
        const Density dry = with(*rule.drySeasonDivisor.value);
        if (*frames.mean >= dry)
            changes.push_back({ChangeWhat::DrySeasonChosen, {*rule.drySeasonDivisor.value, dry.value()}});
    }
    if (frames.verdict == FramesVerdict::Above && threshold.drySeasonDivisor && *frames.mean < with(1.0))
        changes.push_back({ChangeWhat::DrySeasonDropped, {with(1.0).value()}});
}

} // namespace

ControlDecision controlDecision(const ThresholdRule& rule, const Threshold& threshold,
    const FramesFinding& frames, const ControlTiming& timing)
{
    ControlDecision decision;
    decision.verdict = verdictOf(frames.verdict);
    decision.next = nextStep(frames, timing.timing);
    addLarvaeReason(decision.reasons, frames, threshold.larvae);
    decision.reasons.push_back({timingReason(timing.timing)});
    addThreshold(decision.reasons, threshold);

    if (decision.next == NextStep::SearchMoreFrames && frames.moreFrames)
        decision.changes.push_back(
            {ChangeWhat::MoreFrames, {static_cast<double>(frames.moreFrames->value())}});
    addMoney(decision.changes, rule, threshold, frames);
    addDrySeason(decision.changes, rule, threshold, frames);
    if (timing.lookAgain && decision.next != NextStep::ControlPays)
        decision.changes.push_back({ChangeWhat::LookingAgain, {}, timing.lookAgain});
    return decision;
}

} // namespace duskrow::domain
