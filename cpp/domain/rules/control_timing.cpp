// SPDX-License-Identifier: MIT
#include "domain/rules/control_timing.h"

#include <algorithm>
#include <string>

namespace duskrow::domain {

namespace {

using std::chrono::days;
using Findings = std::vector<TimingFinding>;

constexpr std::int64_t mostLarvae = 1'000'000;

Error outOfRange(const char* field, int low, std::int64_t high)
{
    return {ErrorCode::OutOfRange, {field, std::to_string(low), std::to_string(high)}};
}

std::optional<Error> mistakeIn(const ControlFacts& facts)
{
    if (facts.stage && (facts.stage->value() < 0 || facts.stage->value() > 99))
        return outOfRange("stage_bbch", 0, 99);
    if (facts.podsDamaged && !(facts.podsDamaged->value() >= 0.0 && facts.podsDamaged->value() <= 100.0))
        return outOfRange("pods_damaged_percent", 0, 100);
    if (facts.labelInterval && (facts.labelInterval->count() < 0 || facts.labelInterval->count() > 365))
        return outOfRange("label_interval_days", 0, 365);
    if (facts.larvae
        && (facts.larvae->looked < 0 || facts.larvae->largeEnough < 0
            || facts.larvae->largeEnough > facts.larvae->looked))
        return outOfRange("larvae", 0, mostLarvae);
    return std::nullopt;
}

void addStage(Findings& findings, const ControlWindow& window, const ControlFacts& facts)
{
    if (!window.stage.from) return;
    if (!facts.stage) return findings.push_back({TimingReason::StageNotSaid});
    const auto stage = static_cast<double>(facts.stage->value());
    const auto first = static_cast<double>(window.stage.from->value());
    const auto last = static_cast<double>(window.stage.to->value());
    if (stage < first)
        findings.push_back({TimingReason::StageBefore, {stage, first}});
    else if (stage > last)
        findings.push_back({TimingReason::StagePast, {stage, last}});
    else
        findings.push_back({TimingReason::StageInWindow, {stage, first, last}});
}

void addLarvae(Findings& findings, const ControlWindow& window, const ScoutingAdvice* scouting,
    const ControlFacts& facts)
{
    if (!window.largeLarvae.value || !scouting || !scouting->smallestToControl.value) return;
    // None found is no size: whether there are enough of them is the threshold's question.
    if (!facts.larvae || facts.larvae->looked == 0) return findings.push_back({TimingReason::LarvaeNotSized});
    const double share =
        100.0 * static_cast<double>(facts.larvae->largeEnough) / static_cast<double>(facts.larvae->looked);
    const double asked = window.largeLarvae.value->value();
    const auto size = static_cast<double>(scouting->smallestToControl.value->value());
    findings.push_back(
        {share < asked ? TimingReason::LarvaeSmall : TimingReason::LarvaeLarge, {share, asked, size}});
}

void addPods(Findings& findings, const ControlWindow& window, const ControlFacts& facts)
{
    if (!window.decideBeforePodDamage.value) return;
    if (!facts.podsDamaged) return findings.push_back({TimingReason::PodsNotLookedAt});
    const double damaged = facts.podsDamaged->value();
    const double limit = window.decideBeforePodDamage.value->value();
    if (damaged == 0.0)
        findings.push_back({TimingReason::NoPodDamage});
    else if (damaged < limit)
        findings.push_back({TimingReason::PodDamageBegun, {damaged, limit}});
    else
        findings.push_back({TimingReason::PodsPastLimit, {damaged, limit}});
}

void addInterval(Findings& findings, const std::optional<LocalDay>& lastDay, const ControlFacts& facts)
{
    if (!lastDay) return findings.push_back({TimingReason::IntervalNotSaid});
    const auto label = static_cast<double>(facts.labelInterval->count());
    const auto untilCutting = static_cast<double>((*facts.cuttingDay - facts.today).count());
    if (facts.today > *lastDay)
        findings.push_back({TimingReason::IntervalTooShort, {untilCutting, label}});
    else
        findings.push_back({TimingReason::IntervalAllows,
            {static_cast<double>((*lastDay - facts.today).count() + 1), label}});
}

int rankOf(const TimingFinding& finding)
{
    switch (sideOf(finding.reason)) {
    case TimingSide::Late:
        return 0;
    case TimingSide::Early:
        return 1;
    case TimingSide::Within:
        return 2;
    case TimingSide::Open:
        return 3;
    }
    return 3;
}

Timing timingFrom(const Findings& findings)
{
    const auto holds = [&](TimingSide side) {
        return std::any_of(findings.begin(), findings.end(),
            [side](const TimingFinding& finding) { return sideOf(finding.reason) == side; });
    };
    if (holds(TimingSide::Late)) return Timing::TooLate;
    if (holds(TimingSide::Early)) return Timing::TooEarly;
    const bool isStageOpen = std::any_of(findings.begin(), findings.end(),
        [](const TimingFinding& finding) { return finding.reason == TimingReason::StageNotSaid; });
    return isStageOpen || !holds(TimingSide::Within) ? Timing::NotKnown : Timing::InWindow;
}

} // namespace

TimingSide sideOf(TimingReason reason)
{
    switch (reason) {
    case TimingReason::StageBefore:
    case TimingReason::LarvaeSmall:
    case TimingReason::NoPodDamage:
        return TimingSide::Early;
    case TimingReason::StagePast:
    case TimingReason::PodsPastLimit:
    case TimingReason::IntervalTooShort:
        return TimingSide::Late;
    case TimingReason::StageInWindow:
    case TimingReason::LarvaeLarge:
    case TimingReason::PodDamageBegun:
    case TimingReason::IntervalAllows:
        return TimingSide::Within;
    case TimingReason::StageNotSaid:
    case TimingReason::LarvaeNotSized:
    case TimingReason::PodsNotLookedAt:
    case TimingReason::IntervalNotSaid:
        return TimingSide::Open;
    }
    return TimingSide::Open;
}

Result<ControlTiming> controlTiming(
    const ThresholdRule& rule, const ScoutingAdvice* scouting, const ControlFacts& facts)
{
    if (const auto mistake = mistakeIn(facts)) return *mistake;
    ControlTiming result;
    if (facts.labelInterval && facts.cuttingDay) result.lastDay = *facts.cuttingDay - *facts.labelInterval;
    addStage(result.findings, rule.control, facts);
    addLarvae(result.findings, rule.control, scouting, facts);
    addPods(result.findings, rule.control, facts);
    addInterval(result.findings, result.lastDay, facts);
    std::stable_sort(result.findings.begin(), result.findings.end(),
        [](const TimingFinding& a, const TimingFinding& b) { return rankOf(a) < rankOf(b); });
    result.timing = timingFrom(result.findings);
    const bool isLastChance = result.lastDay && *result.lastDay <= facts.today;
    if (result.timing != Timing::TooLate && !isLastChance && rule.control.lookAgain.to) {
        result.lookAgain = facts.today + *rule.control.lookAgain.to;
        if (result.lastDay) result.lookAgain = std::min(*result.lookAgain, *result.lastDay);
    }
    return result;
}

Result<LarvaeBySize> larvaeBySize(const ScoutingAdvice& scouting, std::span<const std::int64_t> counts)
{
    if (counts.size() != scouting.sizeClasses.size()) return outOfRange("larvae", 0, mostLarvae);
    LarvaeBySize larvae;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] < 0 || counts[i] > mostLarvae) return outOfRange("larvae", 0, mostLarvae);
        larvae.looked += counts[i];
        const bool isLarge = scouting.smallestToControl.value
            && scouting.sizeClasses[i].from >= *scouting.smallestToControl.value;
        if (isLarge) larvae.largeEnough += counts[i];
    }
    return larvae;
}

} // namespace duskrow::domain
