// SPDX-License-Identifier: MIT
#include "text/decision_text.h"

#include <QCoreApplication>

#include <cmath>

#include "text/amounts.h"
#include "text/threshold_text.h"
#include "text/unbroken.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct DecisionWords {
    Q_DECLARE_TR_FUNCTIONS(Decision)
};

// One number of a finding, as "20", "12.5"; "?" where it is missing.
template <typename Finding>
QString at(const Finding& finding, std::size_t i, const QLocale& locale)
{
    if (i >= finding.numbers.size()) return QStringLiteral("?");
    return locale.toString(std::round(10.0 * finding.numbers[i]) / 10.0, 'g', 6);
}

template <typename Finding>
QString daysAt(const Finding& finding, std::size_t i, const QLocale& locale)
{
    if (i >= finding.numbers.size()) return QStringLiteral("?");
    return days(std::chrono::days{static_cast<int>(finding.numbers[i])}, locale);
}

template <typename Finding>
QString larvaeAt(const Finding& finding, std::size_t i, const QLocale& locale)
{
    if (i >= finding.numbers.size()) return QStringLiteral("?");
    return exactDensity(LarvaePerSquareMetre{finding.numbers[i]}, locale);
}

// Money as it is paid: whole cents, or none.
QString cents(double amount, const std::string& unit, const QLocale& locale)
{
    const bool isWhole = std::abs(amount - std::round(amount)) < 0.005;
    return unbroken(QStringLiteral("%1 %2").arg(
        locale.toString(amount, 'f', isWhole ? 0 : 2), QString::fromStdString(unit)));
}

QString moreFrames(double count, const QLocale& locale)
{
    if (std::llround(count) == 1) return DecisionWords::tr("one more frame");
    return DecisionWords::tr("%1 more frames").arg(locale.toString(std::llround(count)));
}

QString intervalTooShort(const TimingFinding& finding, const QLocale& locale)
{
    if (!finding.numbers.empty() && finding.numbers[0] < 0.0)
        return DecisionWords::tr("The crop is cut already.");
    return DecisionWords::tr("Cutting is %1 away, but the label asks for %2.")
        .arg(daysAt(finding, 0, locale), daysAt(finding, 1, locale));
}

} // namespace

QString name(ControlVerdict verdict)
{
    switch (verdict) {
    case ControlVerdict::Below:
        return DecisionWords::tr("Below the threshold");
    case ControlVerdict::Above:
        return DecisionWords::tr("Above the threshold");
    case ControlVerdict::TooCloseToCall:
        return DecisionWords::tr("Too close to call");
    }
    return {};
}

QString name(Timing timing)
{
    switch (timing) {
    case Timing::TooEarly:
        return DecisionWords::tr("Too early");
    case Timing::InWindow:
        return DecisionWords::tr("Within the time for control");
    case Timing::TooLate:
        return DecisionWords::tr("Too late");
    case Timing::NotKnown:
        return DecisionWords::tr("Timing not known");
    }
    return {};
}

QString nextStep(NextStep next)
{
    switch (next) {
    case NextStep::LeaveAlone:
        return DecisionWords::tr("Control would cost more than the larvae do. Leave the field as it is.");
    case NextStep::SearchMoreFrames:
        return DecisionWords::tr("Search more frames.");
    case NextStep::LookAgain:
        return DecisionWords::tr("Look again in a few days.");
    case NextStep::SayTiming:
        return DecisionWords::tr(
            "Look at crop stage, pods and larvae: whether it is the right time is not known.");
    case NextStep::ControlPays:
        return DecisionWords::tr("Control would pay for itself, if the label and your adviser allow it.");
    case NextStep::TooLate:
        return DecisionWords::tr("It is too late for control to help here.");
    }
    return {};
}

QString timingReason(const TimingFinding& finding, const QLocale& locale)
{
    const auto number = [&](std::size_t i) { return at(finding, i, locale); };
    switch (finding.reason) {
    case TimingReason::StageBefore:
        return DecisionWords::tr("The crop is at BBCH %1; the window opens at %2.").arg(number(0), number(1));
    case TimingReason::LarvaeSmall:
        return DecisionWords::tr("%1 % of the larvae are %3 mm or longer; it takes %2 %.")
            .arg(number(0), number(1), number(2));
    case TimingReason::NoPodDamage:
        return DecisionWords::tr("No pod is damaged yet.");
    case TimingReason::StagePast:
        return DecisionWords::tr("The crop is at BBCH %1; the window closed at %2.")
            .arg(number(0), number(1));
    case TimingReason::PodsPastLimit:
        return DecisionWords::tr("%1 % of the pods are damaged; the decision comes before %2 %.")
            .arg(number(0), number(1));
    case TimingReason::IntervalTooShort:
        return intervalTooShort(finding, locale);
    case TimingReason::StageInWindow:
        return DecisionWords::tr("The crop is at BBCH %1, within %2 to %3.")
            .arg(number(0), number(1), number(2));
    case TimingReason::LarvaeLarge:
        return DecisionWords::tr("%1 % of the larvae are %2 mm or longer.").arg(number(0), number(2));
    case TimingReason::PodDamageBegun:
        return DecisionWords::tr("%1 % of the pods are damaged: decide before it is %2 %.")
            .arg(number(0), number(1));
    case TimingReason::IntervalAllows:
        return DecisionWords::tr("The label's %1 before cutting leave %2, today included.")
            .arg(daysAt(finding, 1, locale), daysAt(finding, 0, locale));
    case TimingReason::StageNotSaid:
        return DecisionWords::tr("Not said: the crop stage.");
    case TimingReason::LarvaeNotSized:
        return DecisionWords::tr("Not said: how many larvae have reached the size to control.");
    case TimingReason::PodsNotLookedAt:
        return DecisionWords::tr("Not said: how many pods are damaged.");
    case TimingReason::IntervalNotSaid:
        return DecisionWords::tr("Not said: the days before harvest on the label, or the day of cutting.");
    }
    return {};
}

QString lastDaySentence(const ControlTiming& timing, const QLocale& locale)
{
    if (!timing.lastDay) return {};
    return DecisionWords::tr("By the label, counted to cutting, the last day is %1.")
        .arg(day(*timing.lastDay, locale));
}

QString lookAgainSentence(const ControlTiming& timing, const QLocale& locale)
{
    if (!timing.lookAgain) return {};
    return DecisionWords::tr("A good day to look again: %1.").arg(day(*timing.lookAgain, locale));
}

QString decisionReason(const DecisionFinding& finding, const QLocale& locale)
{
    const auto number = [&](std::size_t i) { return at(finding, i, locale); };
    const auto larvae = [&](std::size_t i) { return larvaeAt(finding, i, locale); };
    switch (finding.reason) {
    case DecisionReason::MeanBelow:
        return DecisionWords::tr("The mean, %1, is below the threshold of %2.").arg(larvae(0), larvae(1));
    case DecisionReason::MeanAbove:
        return DecisionWords::tr("The mean, %1, is above the threshold of %2.").arg(larvae(0), larvae(1));
    case DecisionReason::RangeHoldsThreshold:
        return DecisionWords::tr("The threshold of %3 lies within the range, %1 to %2.")
            .arg(number(0), larvae(1), larvae(2));
    case DecisionReason::FewFrames:
        return DecisionWords::tr("Frames searched: %1. That is too few to say.").arg(number(0));
    case DecisionReason::ProbabilityAbove:
        return DecisionWords::tr("The chance that the field is over the threshold is %1 %.")
            .arg(locale.toString(std::round(finding.numbers.empty() ? 0.0 : finding.numbers[0]), 'f', 0));
    case DecisionReason::DrySeason:
        return DecisionWords::tr("The threshold is divided by %1 for a dry season.").arg(number(0));
    case DecisionReason::AtFloor:
        return DecisionWords::tr("The threshold stands at its floor, %1.").arg(larvae(0));
    case DecisionReason::OutsidePublished:
        return DecisionWords::tr("The threshold lies outside what has been published.");
    case DecisionReason::TimingEarly:
        return DecisionWords::tr("It is too early for control.");
    case DecisionReason::TimingFits:
        return DecisionWords::tr("It is within the time for control.");
    case DecisionReason::TimingLate:
        return DecisionWords::tr("It is too late for control.");
    case DecisionReason::TimingNotKnown:
        return DecisionWords::tr("Whether it is the time for control is not known.");
    }
    return {};
}

QString changeSentence(const DecisionChange& change, const Threshold& threshold, const QLocale& locale)
{
    const auto number = [&](std::size_t i) { return i < change.numbers.size() ? change.numbers[i] : 0.0; };
    const QString price = cents(number(0), codeOf(threshold.price.unit), locale);
    const QString cost = cents(number(0), codeOf(threshold.cost.unit), locale);
    switch (change.what) {
    case ChangeWhat::MoreFrames:
        return DecisionWords::tr("About %1 would probably settle it.").arg(moreFrames(number(0), locale));
    case ChangeWhat::PriceAbove:
        return DecisionWords::tr("At a price above %1 control would pay.").arg(price);
    case ChangeWhat::PriceBelow:
        return DecisionWords::tr("At a price below %1 control would not pay.").arg(price);
    case ChangeWhat::CostAbove:
        return DecisionWords::tr("At a cost above %1 control would not pay.").arg(cost);
    case ChangeWhat::CostBelow:
        return DecisionWords::tr("At a cost below %1 control would pay.").arg(cost);
    case ChangeWhat::DrySeasonChosen:
        return DecisionWords::tr("Called a dry season, the threshold would be %1, and control would pay.")
            .arg(larvaeAt(change, 1, locale));
    case ChangeWhat::DrySeasonDropped:
        return DecisionWords::tr(
            "Not called a dry season, the threshold would be %1, and control would not pay.")
            .arg(larvaeAt(change, 0, locale));
    case ChangeWhat::LookingAgain:
        if (!change.day) return {};
        return DecisionWords::tr("Looking again on %1.").arg(day(*change.day, locale));
    }
    return {};
}

} // namespace duskrow::text
