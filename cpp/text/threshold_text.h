// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QString>

#include "domain/rules/threshold.h"

namespace duskrow::text {

// Amounts with their unit, as precise as they are worth reading.

QString exactDensity(domain::LarvaePerSquareMetre larvae, const QLocale& locale = {}); // "20.7 larvae/m²"
QString perFrame(domain::LarvaePerFrame larvae, const QLocale& locale = {}); // "5.2 larvae a frame"
QString money(
    double amount, const std::string& unit, const QLocale& locale = {}); // "12 CAD/ac", "441.5 CAD/t"

// The threshold as a sentence: "The economic threshold is 20.7 larvae/m² (about 21), or 5.2 larvae a frame."
QString thresholdSentence(const domain::Threshold& threshold, const QLocale& locale = {});

// "One larva on each square metre costs 0.58 CAD/ac, 1.43 CAD/ha."
QString lossSentence(const domain::Threshold& threshold, const QLocale& locale = {});

// One line of arithmetic to check by hand: "12 CAD/ac ÷ 0.58 CAD/ac for each larva/m² = 20.6897 larvae/m²".
QString workingLine(
    const domain::WorkingStep& step, const domain::Threshold& threshold, const QLocale& locale = {});

// What a line of arithmetic is for: "Loss to one larva on each square metre".
QString workingName(domain::WorkingWhat what);

// Why the number stands on thinner ground, or what was done to it.
QString noteSentence(domain::ThresholdNote note, const domain::Threshold& threshold,
    const domain::ThresholdRule& rule, const QLocale& locale = {});

// What the published divisor would make of it, which is the person's own to choose; empty when one was chosen
// or nobody has published any.
QString drySeasonOffer(
    const domain::Threshold& threshold, const domain::ThresholdRule& rule, const QLocale& locale = {});

} // namespace duskrow::text
