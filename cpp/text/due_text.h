// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QString>

#include <span>

#include "domain/rules/due.h"
#include "domain/rules/season_week.h"

namespace duskrow::text {

// The thing to do by itself, as a heading: "Count", "Change the lure".
QString dueName(domain::DueWhat what);

// What is due as a part of a line: "count due, 8 nights", "change the lure by 17 Jul".
QString dueWords(const domain::DueItem& item, domain::LocalDay today, const QLocale& locale = {});

// Everything due at one stop in one line, in the order given: "count due, 8 nights; raise the stake".
QString dueLine(std::span<const domain::DueItem> items, domain::LocalDay today, const QLocale& locale = {});

// Why it is due, in whole sentences with its numbers.
QString dueReason(const domain::DueItem& item, domain::LocalDay today, const QLocale& locale = {});

// "Report by Tuesday 14 July, 12:00"
QString reportBy(const domain::ReportDue& report, const QLocale& locale = {});

} // namespace duskrow::text
