// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QStringList>

#include <optional>

#include "domain/protocol/pest_rules.h"
#include "domain/rules/season_outlook.h"
#include "domain/rules/trap_season.h"
#include "text/animal.h"

namespace duskrow::text {

// A trap's season in words, for screens and for the command line.

// Whether any visit gave a count. Without one a season has no number, which is not zero.
bool isCounted(const domain::TrapSeason& season);

// The one number: "259", "at least 140"; a dash without a count.
QString seasonTotal(const domain::TrapSeason& season, const QLocale& locale = {});

// What that number is: "moths so far", "moths in the whole season", "moths, part of the flight only".
QString seasonCaption(const domain::TrapSeason& season, const Animal& animal = {});

// How far the flight is: "flight about half over" where past seasons say it, else what the trap's own counts
// show.
//
// outlook  by the day of the trap's last count
// Empty when the trap's counts end before the flight does.
QString flightWords(const domain::TrapSeason& season, const std::optional<domain::SeasonOutlook>& outlook,
    const Animal& animal = {});

// "season likely 330 to 640"; empty when nobody can say.
QString likelyRange(const domain::SeasonOutlook& outlook, const QLocale& locale = {});

// What the likely range rests on, or why there is none.
QString outlookReason(const domain::SeasonOutlook& outlook);

// Why the season takes a band or takes none; several sentences where several things hold.
QStringList standingReasons(const domain::TrapSeason& season, const domain::Trap& trap,
    const domain::SeasonRules& rules, const Animal& animal = {});

// The catches of a band: "300 to 899 moths in a whole season".
QString bandSpan(const domain::Band& band, const QLocale& locale = {}, const Animal& animal = {});

// What is not certain about the total, a sentence each: open questions, moths that wait for a name, an
// estimated range, named samples.
QStringList totalRemarks(
    const domain::TrapSeason& season, const QLocale& locale = {}, const Animal& animal = {});

// One visit: what was caught, then the numbers that belong to it, then whatever is particular about it.
QString visitCatch(
    const domain::VisitCatch& caught, const QLocale& locale = {}, const Animal& animal = {}); // "47 moths"
QString visitNumbers(const domain::VisitCatch& caught, const QLocale& locale = {});
QStringList visitFlags(
    const domain::VisitCatch& caught, const domain::Visit& visit, std::optional<std::chrono::days> interval);

// Whether a count covers so many nights that a visit was missed.
//
// interval  of the protocol between visits; nothing is long where it is not known
bool isLong(domain::Nights nights, std::optional<std::chrono::days> interval);
QString longCount(domain::Nights nights); // "one count over 14 nights"

// One reporting week: "6 Jul to 12 Jul", "about 12 moths", and what is particular about it.
QString weekTitle(const domain::ReportingWeek& week, const QLocale& locale = {});
QString weekCatch(const domain::WeekCatch& week, const QLocale& locale = {}, const Animal& animal = {});
QString weekNumbers(const domain::WeekCatch& week, const QLocale& locale = {});
QStringList weekFlags(const domain::WeekCatch& week);

} // namespace duskrow::text
