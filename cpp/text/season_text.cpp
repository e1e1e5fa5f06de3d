// SPDX-License-Identifier: MIT
#include "text/season_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>

#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

QString seasonWords(const char* sentence)
{
    return QCoreApplication::translate("SeasonText", sentence);
}

QString joined(const QStringList& parts)
{
    return parts.join(QStringLiteral(" · "));
}

constexpr double widestGuess = 0.3; // of the flight: further apart, past seasons do not agree on one part

struct PartOver {
    double upTo;
    const char* words;
};

constexpr std::array partsOver{
    PartOver{0.08, QT_TRANSLATE_NOOP("SeasonText", "flight hardly begun")},
    PartOver{0.38, QT_TRANSLATE_NOOP("SeasonText", "flight about a quarter over")},
    PartOver{0.63, QT_TRANSLATE_NOOP("SeasonText", "flight about half over")},
    PartOver{0.88, QT_TRANSLATE_NOOP("SeasonText", "flight about three quarters over")},
    PartOver{2.0, QT_TRANSLATE_NOOP("SeasonText", "flight nearly over")},
};

QString partOver(const SeasonOutlook& outlook)
{
    if (outlook.fractionHigh - outlook.fractionLow > widestGuess)
        return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "flight %1 to %2 % over"))
            .arg(std::lround(outlook.fractionLow * 100))
            .arg(std::lround(outlook.fractionHigh * 100));
    const double middle = (outlook.fractionLow + outlook.fractionHigh) / 2;
    for (const PartOver& part : partsOver)
        if (middle < part.upTo) return seasonWords(part.words);
    return {};
}

QString phaseWords(FlightPhase phase, const Animal& animal)
{
    switch (phase) {
    case FlightPhase::NotKnown:
        return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "flight not known yet"));
    case FlightPhase::NoneYet:
        //: "no moths yet"
        return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "no %1 yet")).arg(animal.many());
    case FlightPhase::Rising:
        return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "flight rising"));
    case FlightPhase::NearHighest:
        return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "flight near its highest so far"));
    case FlightPhase::PastHighest:
        return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "flight past its highest so far"));
    }
    return {};
}

QString seasonsOf(const SeasonOutlook& outlook)
{
    const auto years = outlook.years == 1 ? seasonWords(QT_TRANSLATE_NOOP("SeasonText", "one year"))
                                          : seasonWords(QT_TRANSLATE_NOOP("SeasonText", "%1 years"))
                                                .arg(number(static_cast<std::int64_t>(outlook.years)));
    return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "%1 past trap seasons of %2"))
        .arg(number(static_cast<std::int64_t>(outlook.seasons)), years);
}

QString lateSentence(const Trap& trap, const SeasonRules& rules, const Animal& animal)
{
    return seasonWords(
        QT_TRANSLATE_NOOP("SeasonText", "Set up on %1, after %2: it may have missed the first %3."))
        .arg(shortDay(*trap.setDay), shortDay(*rules.latestSetUp), animal.many());
}

QString endedSentence(const Trap& trap, const SeasonRules& rules, const Animal& animal)
{
    const char* sentence = trap.endReason == EndReason::Lost
        ? QT_TRANSLATE_NOOP("SeasonText", "Lost on %1, before %2: it missed the last %3.")
        : QT_TRANSLATE_NOOP("SeasonText", "Ended on %1, before %2: it missed the last %3.");
    return seasonWords(sentence).arg(
        shortDay(*trap.endDay), shortDay(*rules.earliestTakeDown), animal.many());
}

QString uncountedSentence(const TrapSeason& season, const SeasonRules& rules, const Animal& animal)
{
    if (!season.countedUntil) return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "It was never counted."));
    return seasonWords(
        QT_TRANSLATE_NOOP("SeasonText", "Last counted on %1, before %2: the last %3 are not in."))
        .arg(shortDay(*season.countedUntil), shortDay(*rules.earliestTakeDown), animal.many());
}

QString unknownSentence(const Trap& trap)
{
    return trap.setDay
        ? seasonWords(
            QT_TRANSLATE_NOOP("SeasonText", "No band: the protocol does not say when a season is whole."))
        : seasonWords(QT_TRANSLATE_NOOP("SeasonText", "No band: nobody noted the day of set-up."));
}

QStringList partReasons(
    const TrapSeason& season, const Trap& trap, const SeasonRules& rules, const Animal& animal)
{
    QStringList reasons;
    if (season.part.cameLate) reasons << lateSentence(trap, rules, animal);
    if (season.part.endedEarly) reasons << endedSentence(trap, rules, animal);
    if (season.part.notCountedToEnd) reasons << uncountedSentence(season, rules, animal);
    reasons << seasonWords(
        QT_TRANSLATE_NOOP("SeasonText", "So there is no band: bands are for whole seasons."));
    return reasons;
}

QString questionSentence(CatchQuestion question, const QString& day, const Animal& animal)
{
    switch (question) {
    case CatchQuestion::EmptiedUnknown:
        return seasonWords(
            QT_TRANSLATE_NOOP("SeasonText",
                "Was the trap emptied on %1? Until that is known the higher of the two counts stands."))
            .arg(day);
    case CatchQuestion::CountFell:
        return seasonWords(
            QT_TRANSLATE_NOOP("SeasonText",
                "Fewer %2 on %1 than at the visit before, though it was not emptied: the higher count "
                "stands."))
            .arg(day, animal.many());
    }
    return {};
}

QString dayOfVisit(const TrapSeason& season, const Uuid& id)
{
    for (const VisitCatch& caught : season.visits)
        if (caught.visit == id) return shortDay(caught.day);
    return {};
}

QString failureWords(const Visit& visit)
{
    if (!visit.state || *visit.state == TrapState::Fine)
        return seasonWords(
            QT_TRANSLATE_NOOP("SeasonText", "at least: the trap failed since it was last emptied"));
    const char* sentence = *visit.state == TrapState::LureGone
        ? QT_TRANSLATE_NOOP("SeasonText", "at least: %1")
        : QT_TRANSLATE_NOOP("SeasonText", "at least: trap %1");
    return seasonWords(sentence).arg(name(*visit.state));
}

} // namespace

bool isCounted(const TrapSeason& season)
{
    return std::any_of(season.visits.begin(), season.visits.end(),
        [](const VisitCatch& caught) { return caught.count.has_value(); });
}

QString seasonTotal(const TrapSeason& season, const QLocale& locale)
{
    if (!isCounted(season)) return QStringLiteral("–");
    return season.isMinimum() ? atLeast(season.total, locale) : number(season.total.value(), locale);
}

QString seasonCaption(const TrapSeason& season, const Animal& animal)
{
    if (!isCounted(season)) return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "no counts yet"));
    const QString what = animal.after(season.total.value());
    switch (season.standing) {
    case SeasonStanding::Whole:
        //: "moths in the whole season"
        return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "%1 in the whole season")).arg(what);
    case SeasonStanding::PartOfFlight:
        return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "%1, part of the flight only")).arg(what);
    case SeasonStanding::SoFar:
    case SeasonStanding::NotKnown:
        break;
    }
    return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "%1 so far")).arg(what);
}

QString flightWords(
    const TrapSeason& season, const std::optional<SeasonOutlook>& outlook, const Animal& animal)
{
    if (season.standing == SeasonStanding::Whole)
        return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "flight over"));
    if (season.part.endedEarly || season.part.notCountedToEnd) return {};
    if (outlook && season.standing == SeasonStanding::SoFar) return partOver(*outlook);
    return phaseWords(season.flight.phase, animal);
}

QString likelyRange(const SeasonOutlook& outlook, const QLocale& locale)
{
    if (!outlook.totalLow || !outlook.totalHigh) return {};
    return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "season likely %1"))
        .arg(range(*outlook.totalLow, *outlook.totalHigh, locale));
}

QString outlookReason(const SeasonOutlook& outlook)
{
    if (!outlook.totalLow)
        return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "Too early to say where the season may end (%1)."))
            .arg(seasonsOf(outlook));
    return seasonWords(QT_TRANSLATE_NOOP("SeasonText",
                           "The likely range comes from %1. It knows nothing of this year’s weather."))
        .arg(seasonsOf(outlook));
}

QStringList standingReasons(
    const TrapSeason& season, const Trap& trap, const SeasonRules& rules, const Animal& animal)
{
    switch (season.standing) {
    case SeasonStanding::SoFar:
        return {seasonWords(
            QT_TRANSLATE_NOOP("SeasonText", "Bands are for whole seasons: none until the flight is over."))};
    case SeasonStanding::Whole:
        return {};
    case SeasonStanding::PartOfFlight:
        return partReasons(season, trap, rules, animal);
    case SeasonStanding::NotKnown:
        return {unknownSentence(trap)};
    }
    return {};
}

QString bandSpan(const Band& band, const QLocale& locale, const Animal& animal)
{
    if (!band.below)
        return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "%1 %2 or more in a whole season"))
            .arg(number(band.from.value(), locale), animal.many());
    return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "%1 %2 in a whole season"))
        .arg(range(band.from, *band.below - Moths{1}, locale), animal.many());
}

QStringList totalRemarks(const TrapSeason& season, const QLocale& locale, const Animal& animal)
{
    QStringList remarks;
    for (const OpenQuestion& question : season.questions)
        remarks << questionSentence(question.question, dayOfVisit(season, question.visit), animal);
    if (season.range)
        remarks << seasonWords(QT_TRANSLATE_NOOP("SeasonText", "A heavy catch was estimated: %1 %2."))
                       .arg(range(season.range->low, season.range->high, locale), animal.many());
    if (season.waiting.value() > 0)
        remarks << seasonWords(
            QT_TRANSLATE_NOOP("SeasonText", "Not in the total: %1 that nobody has named yet."))
                       .arg(animal.amount(season.waiting, locale));
    if (season.isCorrected)
        remarks << seasonWords(QT_TRANSLATE_NOOP("SeasonText", "Named samples are in the total."));
    for (const LocalDay moved : season.moves)
        remarks << seasonWords(QT_TRANSLATE_NOOP("SeasonText", "The trap was moved on %1."))
                       .arg(shortDay(moved, locale));
    return remarks;
}

QString visitCatch(const VisitCatch& caught, const QLocale& locale, const Animal& animal)
{
    if (!caught.count) return name(Outcome::CouldNotCount);
    if (caught.count->value() == 0) return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "none caught"));
    return animal.amount(*caught.count, locale);
}

QString visitNumbers(const VisitCatch& caught, const QLocale& locale)
{
    QStringList parts;
    parts << (caught.nights ? nights(*caught.nights, locale)
                            : seasonWords(QT_TRANSLATE_NOOP("SeasonText", "nights not known")));
    if (caught.rate) parts << perNight(*caught.rate, locale);
    parts << soFar(caught.soFar, locale);
    return joined(parts);
}

QStringList visitFlags(
    const VisitCatch& caught, const Visit& visit, std::optional<std::chrono::days> interval)
{
    QStringList flags;
    if (!caught.count && visit.reason) flags << name(*visit.reason);
    if (!caught.count && visit.emptied == true)
        flags << seasonWords(QT_TRANSLATE_NOOP("SeasonText", "emptied uncounted: those nights are lost"));
    if (caught.isAtLeast) flags << failureWords(visit);
    if (caught.count && caught.nights && isLong(*caught.nights, interval)) flags << longCount(*caught.nights);
    if (caught.count && visit.emptied == false)
        flags << seasonWords(QT_TRANSLATE_NOOP("SeasonText", "not emptied: the next count holds these too"));
    if (caught.range)
        flags << seasonWords(QT_TRANSLATE_NOOP("SeasonText", "estimated, %1"))
                     .arg(range(caught.range->low, caught.range->high));
    if (caught.isCorrected())
        flags << seasonWords(QT_TRANSLATE_NOOP("SeasonText", "counted %1, named samples add %2"))
                     .arg(number(caught.asCounted->value()), number(caught.named.value()));
    if (caught.waiting.value() > 0)
        flags << seasonWords(QT_TRANSLATE_NOOP("SeasonText", "%1 not named yet"))
                     .arg(number(caught.waiting.value()));
    return flags;
}

bool isLong(Nights nights, std::optional<std::chrono::days> interval)
{
    // Half as long again: common practice, no source.
    return interval && 2 * nights.value() > 3 * interval->count();
}

QString longCount(Nights count)
{
    return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "one count over %1")).arg(nights(count));
}

QString weekTitle(const ReportingWeek& week, const QLocale& locale)
{
    return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "%1 to %2"))
        .arg(shortDay(week.first, locale), shortDay(week.last, locale));
}

QString weekCatch(const WeekCatch& week, const QLocale& locale, const Animal& animal)
{
    if (!week.moths) return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "not counted"));
    const Moths whole{std::llround(*week.moths)};
    if (!week.isDerived) return animal.amount(whole, locale);
    return seasonWords(QT_TRANSLATE_NOOP("SeasonText", "about %1")).arg(animal.amount(whole, locale));
}

QString weekNumbers(const WeekCatch& week, const QLocale& locale)
{
    if (!week.moths) return {};
    QStringList parts{
        seasonWords(QT_TRANSLATE_NOOP("SeasonText", "%1 of 7 nights counted")).arg(week.nights.value())};
    if (week.rate) parts << perNight(*week.rate, locale);
    return joined(parts);
}

QStringList weekFlags(const WeekCatch& week)
{
    QStringList flags;
    if (week.isDerived)
        flags << seasonWords(QT_TRANSLATE_NOOP("SeasonText", "derived: shared out by nights"));
    if (week.isAtLeast) flags << seasonWords(QT_TRANSLATE_NOOP("SeasonText", "at least: the trap failed"));
    if (week.isProvisional) flags << seasonWords(QT_TRANSLATE_NOOP("SeasonText", "a question is open"));
    return flags;
}

} // namespace duskrow::text
