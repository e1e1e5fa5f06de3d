// SPDX-License-Identifier: MIT
#include "text/round_text.h"

#include <QCoreApplication>

#include "text/amounts.h"
#include "text/way_text.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct RoundWords {
    Q_DECLARE_TR_FUNCTIONS(RoundWords)
};

constexpr Metres sameSpot{10.0}; // about as well as a receiver knows it: the direction would be chance

QString stopsWords(std::size_t stops, const QLocale& locale)
{
    if (stops == 1) return RoundWords::tr("one stop");
    return RoundWords::tr("%1 stops").arg(number(static_cast<std::int64_t>(stops), locale));
}

// Five decimals are a step of about a metre.
QString degrees(GeoPoint place)
{
    constexpr int decimals = 5;
    return QString::number(place.latitude(), 'f', decimals) + QStringLiteral(", ")
        + QString::number(place.longitude(), 'f', decimals);
}

} // namespace

QString wayOn(const Course& course, const QLocale& locale)
{
    const QString far = distance(course.distance, locale);
    if (!course.bearing || course.distance < sameSpot)
        return RoundWords::tr("%1 from the stop before.").arg(far);
    //: a distance and a point of the compass
    return RoundWords::tr("%1 to the %2 of the stop before.").arg(far, name(compassPoint(*course.bearing)));
}

QString roundLength(Metres length, RoundMetric metric, bool isWhole, const QLocale& locale)
{
    const QString far = distance(length, locale);
    QString said = metric == RoundMetric::StraightLine
        ? RoundWords::tr("About %1 in all, by straight lines.").arg(far)
        : RoundWords::tr("About %1 in all, along the lines of the survey.").arg(far);
    if (!isWhole) said += QLatin1Char(' ') + RoundWords::tr("Stops without a place come last.");
    return said + QLatin1Char(' ') + RoundWords::tr("A suggestion: it knows no road, gate or slough.");
}

QStringList roundReminders()
{
    // Common practice, no source.
    return {RoundWords::tr(
                "No round when it is muddy: wet soil on boots and wheels goes along to the next field."),
        RoundWords::tr("Boots and tools are cleaned between fields.")};
}

QString coolBoxReminder(std::size_t lures, const QLocale& locale)
{
    if (lures == 0) return {};
    // Common practice, no source.
    if (lures == 1) return RoundWords::tr("One lure is to be changed: take it along closed, in a cool box.");
    return RoundWords::tr("%1 lures are to be changed: take them along closed, in a cool box.")
        .arg(number(static_cast<std::int64_t>(lures), locale));
}

QString backByMessage(const BackBy& message, const QLocale& locale)
{
    const QString time = timeOfDay(static_cast<int>(message.time.count()), locale);
    //: a programme's name, "7 stops", a time of day
    const QString plan = RoundWords::tr("Walking the traps of %1; %2; back by %3.")
                             .arg(message.programme, stopsWords(message.stops, locale), time);
    if (message.lastStop.isEmpty()) return plan + QLatin1Char(' ') + RoundWords::tr("If I am not, call me.");
    const QString place = message.lastPlace
        ? message.lastStop + QStringLiteral(", ") + degrees(*message.lastPlace)
        : message.lastStop;
    return plan + QLatin1Char(' ') + RoundWords::tr("If I am not, call me or look here: %1").arg(place);
}

} // namespace duskrow::text
