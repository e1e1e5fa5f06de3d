// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

#include "domain/rules/week_desk.h"

namespace duskrow::text {

// "12 Jul to 18 Jul"
QString weekDays(const domain::ReportingWeek& week, const QLocale& locale = {});

// "71 of 84 in, 2 of them could not be counted, 6 late"
QString reportedLine(const domain::Reported& sum, const QLocale& locale = {});

QString name(domain::WeekStanding standing); // "late"

// What a cooperator is asked for who has not reported: no pressing, and that zero counts too.
struct LateAsk {
    QString to; // empty where nobody is known
    QString from;
    domain::ReportingWeek week;
    QStringList traps; // at least one
};
QString lateSubject(const LateAsk& ask, const QLocale& locale = {});
QString lateMessage(const LateAsk& ask, const QLocale& locale = {});

} // namespace duskrow::text
