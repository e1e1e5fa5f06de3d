// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QStringList>

#include <string>

#include "domain/rules/calendar_gaps.h"

namespace duskrow::text {

// The calendar of moth and crop in words, for screens and for the command line.

// language  of the texts in the protocol: "en", "fr"
QString calendarWhat(
    const domain::CalendarSpan& span, const domain::Protocol& protocol, const std::string& language);

// "12 Jul to 18 Jul", or one day.
QString calendarDays(domain::LocalDay from, domain::LocalDay to, const QLocale& locale = {});

QString certainty(const domain::CalendarSpan& span); // "measured", "expected"

// Why it lies there, as sentences: what it was taken from, and which part of that is common practice.
QStringList calendarReasons(const domain::CalendarSpan& span);

// What the calendar cannot say, why, and the way out.
QString gapWords(domain::CalendarGap gap);

QString stageWords(const domain::FlightPosterior& flight); // "early", "around the peak", "past the peak" ...

// "33 to 71 %": of a flight that is over, as a range and never as one number.
QString partWords(const domain::ChanceRange& part, const QLocale& locale = {});

} // namespace duskrow::text
