// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QString>

#include "domain/rules/control_decision.h"

namespace duskrow::text {

QString name(domain::ControlVerdict verdict); // "Too close to call"
QString name(domain::Timing timing); // "Too early"

// What to do next, as a sentence.
QString nextStep(domain::NextStep next);

// Why the timing is what it is, with its numbers.
QString timingReason(const domain::TimingFinding& finding, const QLocale& locale = {});

// "The last day to spray by the label is Tuesday 11 August." and "Look again about ..."; empty without a day.
QString lastDaySentence(const domain::ControlTiming& timing, const QLocale& locale = {});
QString lookAgainSentence(const domain::ControlTiming& timing, const QLocale& locale = {});

// Why the verdict is what it is, with its numbers.
QString decisionReason(const domain::DecisionFinding& finding, const QLocale& locale = {});

// What would give another verdict: "At a price above 16 CAD/bu control would pay."
QString changeSentence(
    const domain::DecisionChange& change, const domain::Threshold& threshold, const QLocale& locale = {});

} // namespace duskrow::text
