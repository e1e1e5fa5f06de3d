// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QStringList>

#include <span>

#include "domain/rules/frame_estimate.h"
#include "domain/rules/frame_verdict.h"
#include "domain/rules/stop_table.h"

namespace duskrow::text {

// A scouting walk in words, for screens and for the command line.

QString frames(domain::Frames count, const QLocale& locale = {}); // "10 frames"
// One decimal below ten: "22 larvae per m²", "1.6 larvae per m²".
QString density(domain::LarvaePerSquareMetre value, const QLocale& locale = {});

// What was counted, the mean and its range, a sentence each; what is missing is said and why.
QStringList estimateSentences(const domain::FrameEstimate& estimate, const QLocale& locale = {});

// "The chance that the field has more than 20 larvae per m² is about 67 %."; empty where it is not known.
QString chanceSentence(const domain::FrameEstimate& estimate, domain::LarvaePerSquareMetre threshold,
    const QLocale& locale = {});

// What the stop rule says after this walk, and the totals that would end it at the next frame.
QString stopSentence(const domain::StopPlan& plan, const domain::StopReport& report,
    const domain::FrameEstimate& estimate, const QLocale& locale = {});

// "Below your threshold of 20 larvae per m²."; says so when a line was met and yet nothing is called.
QString verdictSentence(domain::FrameVerdict verdict, domain::StopState state,
    domain::LarvaePerSquareMetre threshold, const QLocale& locale = {});

// How often the plan errs, in fields of 100, for these rows of its exact table.
QString operatingSentence(
    const domain::OperatingRow& row, domain::LarvaePerSquareMetre threshold, const QLocale& locale = {});

// What a textbook would say, and why it is not shown as the range: "A textbook range would be 9 to 35 ...".
QString textbookSentence(const domain::TextbookFigures& figures, const QLocale& locale = {});

// How many frames a range of a given width takes: "To know the mean within 50 % takes about 19 frames, ...".
//
// mean        larvae per frame that are expected, e.g. at the threshold
// dispersion  k of the frames
// Empty where no number can be given.
QString precisionSentence(domain::LarvaePerFrame mean, double dispersion, const QLocale& locale = {});

} // namespace duskrow::text
