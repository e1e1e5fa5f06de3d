// SPDX-License-Identifier: MIT
#include "app/visit/visit_words.h"

#include <QCoreApplication>

#include <cmath>

#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// Longer than this is more than one missed day of a weekly round (common practice, no source).
constexpr std::int64_t usualNights = 9;

QString say(const char* words)
{
    return QCoreApplication::translate("VisitWords", words);
}

QString towards(CompassPoint point)
{
    switch (point) {
    case CompassPoint::North:
        return say(QT_TRANSLATE_NOOP("VisitWords", "%1 to the north"));
    case CompassPoint::NorthEast:
        return say(QT_TRANSLATE_NOOP("VisitWords", "%1 to the north-east"));
    case CompassPoint::East:
        return say(QT_TRANSLATE_NOOP("VisitWords", "%1 to the east"));
    case CompassPoint::SouthEast:
        return say(QT_TRANSLATE_NOOP("VisitWords", "%1 to the south-east"));
    case CompassPoint::South:
        return say(QT_TRANSLATE_NOOP("VisitWords", "%1 to the south"));
    case CompassPoint::SouthWest:
        return say(QT_TRANSLATE_NOOP("VisitWords", "%1 to the south-west"));
    case CompassPoint::West:
        return say(QT_TRANSLATE_NOOP("VisitWords", "%1 to the west"));
    case CompassPoint::NorthWest:
        return say(QT_TRANSLATE_NOOP("VisitWords", "%1 to the north-west"));
    }
    return say("%1");
}

QString daysWords(std::int64_t days)
{
    return days == 1 ? say(QT_TRANSLATE_NOOP("VisitWords", "1 day"))
                     : say(QT_TRANSLATE_NOOP("VisitWords", "%1 days")).arg(text::number(days));
}

QString secondVisitWords(std::int64_t minutes, bool wasEmptied, const text::Animal& animal)
{
    const QString ago = minutes < 60
        ? say(QT_TRANSLATE_NOOP("VisitWords", "%1 minutes")).arg(text::number(minutes))
        : say(QT_TRANSLATE_NOOP("VisitWords", "%1 hours")).arg(text::number(minutes / 60));
    if (wasEmptied)
        return say(QT_TRANSLATE_NOOP("VisitWords",
                       "Another visit to this trap lies only %1 away, and it emptied the trap. "
                       "Are these other %2?"))
            .arg(ago, animal.many());
    return say(QT_TRANSLATE_NOOP("VisitWords",
                   "Another visit to this trap lies only %1 away, and it did not empty the trap. "
                   "Does this count hold those %2 as well?"))
        .arg(ago, animal.many());
}

} // namespace

QString distanceAndBearing(Metres distance, std::optional<Degrees> bearing)
{
    if (!bearing) return say(QT_TRANSLATE_NOOP("VisitWords", "%1 away")).arg(text::distance(distance));
    return towards(compassPoint(*bearing)).arg(text::distance(distance));
}

QString whereFromHere(const place::Reading& here, const Trap& trap)
{
    const auto place = trap.place();
    if (!place) return {};
    const Course course = courseBetween(here.point, *place);
    const double error =
        std::hypot(here.accuracy.value(), trap.accuracy ? toMetres(*trap.accuracy).value() : 0.0);
    const bool whirls = course.distance.value() < 2.0 * error;
    return distanceAndBearing(course.distance, whirls ? std::nullopt : course.bearing);
}

QString lastEmptiedWords(const VisitEntry& entry)
{
    const TrapNow now = entry.before();
    if (!now.lastEmptied) return {};
    const Nights nights = nightsBetween(*now.lastEmptied, entry.day());
    const bool isSetUp = entry.book().trap.setDay == now.lastEmptied;
    if (nights.value() <= 0)
        return isSetUp ? say(QT_TRANSLATE_NOOP("VisitWords", "set up today"))
                       : say(QT_TRANSLATE_NOOP("VisitWords", "already emptied today"));
    const QString words = isSetUp ? say(QT_TRANSLATE_NOOP("VisitWords", "set up %1 ago"))
                                  : say(QT_TRANSLATE_NOOP("VisitWords", "last emptied %1 ago"));
    return words.arg(text::nights(nights));
}

QString longIntervalWords(const std::optional<VisitCatch>& caught)
{
    if (!caught || !caught->nights || caught->nights->value() <= usualNights) return {};
    return say(QT_TRANSLATE_NOOP("VisitWords", "One count over %1: the total stands."))
        .arg(text::nights(*caught->nights));
}

QString flightWords(const VisitEntry& entry)
{
    const auto last = entry.book().seasonRules.lastDay;
    if (last && entry.day() > *last) return say(QT_TRANSLATE_NOOP("VisitWords", "flight likely over"));
    return say(QT_TRANSLATE_NOOP("VisitWords", "flight not over yet"));
}

QString questionKey(const AskedQuestion& asked)
{
    QString key = QString::number(static_cast<int>(asked.question));
    for (const std::int64_t number : asked.numbers)
        key += QLatin1Char(':') + QString::number(static_cast<qlonglong>(number));
    return key;
}

QString questionWords(const AskedQuestion& asked, const text::Animal& animal)
{
    const auto& numbers = asked.numbers;
    switch (asked.question) {
    case VisitQuestion::InFuture:
        return say(QT_TRANSLATE_NOOP("VisitWords", "This day lies %1 ahead. Is it the day of the visit?"))
            .arg(daysWords(numbers[0]));
    case VisitQuestion::BeforeSetUp:
        return say(QT_TRANSLATE_NOOP("VisitWords",
                       "This day lies %1 before the trap was set up. Is it the day of the visit?"))
            .arg(daysWords(numbers[0]));
    case VisitQuestion::AfterEnd:
        return say(QT_TRANSLATE_NOOP("VisitWords",
                       "This day lies %1 after the trap was taken down. Is it the day of the visit?"))
            .arg(daysWords(numbers[0]));
    case VisitQuestion::SecondWithinDay:
        return secondVisitWords(numbers[0], numbers[1] == 1, animal);
    case VisitQuestion::LongSinceEmptied:
        return say(QT_TRANSLATE_NOOP("VisitWords",
                       "The trap was last emptied %1 ago by the records. Did nobody empty it since?"))
            .arg(daysWords(numbers[0]));
    case VisitQuestion::CatchFarAboveOthers:
        return say(QT_TRANSLATE_NOOP("VisitWords",
                       "%1 is far above the largest other catch of this trap, %2. Is it right?"))
            .arg(animal.amount(Moths{numbers[0]}), text::number(numbers[1]));
    case VisitQuestion::CatchUnlikelyLarge:
        return say(QT_TRANSLATE_NOOP("VisitWords", "%1 in one trap is very many. Is it right?"))
            .arg(animal.amount(Moths{numbers[0]}));
    }
    return {};
}

QString heavyCatchWords(const HeavyCatch& estimate, const text::Animal& animal)
{
    if (!estimate.low || !estimate.high) return animal.amount(estimate.estimate);
    return say(QT_TRANSLATE_NOOP("VisitWords", "about %1, likely %2"))
        .arg(animal.amount(estimate.estimate), text::range(*estimate.low, *estimate.high));
}

QString heavyCatchWhy(const HeavyCatch& estimate, const text::Animal& animal)
{
    switch (estimate.method) {
    case HeavyCatchMethod::WholeCounted:
        return say(QT_TRANSLATE_NOOP("VisitWords", "The whole catch was counted: this is no estimate."));
    case HeavyCatchMethod::AssumedClumping:
        return say(
            QT_TRANSLATE_NOOP("VisitWords",
                "The range assumes that %1 clump twice as much as perfect mixing would leave them. Three "
                "parts or more show how much they really do."))
            .arg(animal.many());
    case HeavyCatchMethod::SpreadOfParts:
        return say(QT_TRANSLATE_NOOP("VisitWords", "The range comes from how much the parts differ."));
    }
    return {};
}

QString reentryWords(const Visit& visit, const Moment& now)
{
    if (visit.sprayed != true || !visit.sprayedDay || !visit.reentryHours) return {};
    // Nobody knows the hour of spraying: the end of that day is taken, so that the wait is never too short.
    const auto until = *visit.sprayedDay + std::chrono::days{1} + std::chrono::hours{*visit.reentryHours};
    const auto local =
        std::chrono::local_time<std::chrono::milliseconds>{now.at.time_since_epoch()} + now.offset;
    if (until <= local)
        return say(QT_TRANSLATE_NOOP("VisitWords", "The re-entry time of the label is over."));
    const auto day = std::chrono::floor<std::chrono::days>(until);
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(until - day).count();
    if (minutes == 0)
        return say(QT_TRANSLATE_NOOP("VisitWords",
                       "Stay out until the end of %1: the day of spraying and the label's %2 h."))
            .arg(text::day(day - std::chrono::days{1}), text::number(*visit.reentryHours));
    return say(
        QT_TRANSLATE_NOOP("VisitWords", "Stay out until %1, %2: the day of spraying and the label's %3 h."))
        .arg(text::day(day), text::timeOfDay(static_cast<int>(minutes)), text::number(*visit.reentryHours));
}

QString sampleWords(const Sample& sample, const text::Animal& animal)
{
    const QString moths = animal.amount(sample.moths.value_or(Moths{}));
    const QString state = text::name(sample.state.value_or(SampleState::Kept));
    return moths + QStringLiteral(" · ") + state;
}

} // namespace duskrow::app
