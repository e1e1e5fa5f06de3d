// SPDX-License-Identifier: MIT
#include "text/amounts.h"

#include <QCoreApplication>
#include <QTime>

#include <algorithm>
#include <cmath>

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

QString translated(const char* words)
{
    return QCoreApplication::translate("Amount", words);
}

// The number goes in by itself: %n would be written without the locale's separators. One has words of its
// own, so that English needs no translation file.
QString counted(const char* one, const char* many, std::int64_t count, const QLocale& locale)
{
    if (count == 1) return translated(one).arg(locale.toString(qlonglong{1}));
    const auto plural = static_cast<int>(std::clamp<std::int64_t>(count, 0, 1'000'000'000));
    return QCoreApplication::translate("Amount", many, nullptr, plural)
        .arg(locale.toString(static_cast<qlonglong>(count)));
}

// Without group separators: a distance or height rarely needs them, and never below a thousand.
QString rounded(double value, int decimals, const QLocale& locale)
{
    return locale.toString(value, 'f', decimals);
}

qint64 centimetres(Millimetres value)
{
    return std::llround(static_cast<double>(value.value()) / 10.0);
}

} // namespace

QString number(std::int64_t value, const QLocale& locale)
{
    return locale.toString(static_cast<qlonglong>(value));
}

QString moths(Moths count, const QLocale& locale)
{
    return counted(QT_TRANSLATE_NOOP("Amount", "%1 moth"), QT_TRANSLATE_N_NOOP("Amount", "%1 moths"),
        count.value(), locale);
}

QString bees(Bees count, const QLocale& locale)
{
    return counted(QT_TRANSLATE_NOOP("Amount", "%1 bee"), QT_TRANSLATE_N_NOOP("Amount", "%1 bees"),
        count.value(), locale);
}

QString larvae(Larvae count, const QLocale& locale)
{
    return counted(QT_TRANSLATE_NOOP("Amount", "%1 larva"), QT_TRANSLATE_N_NOOP("Amount", "%1 larvae"),
        count.value(), locale);
}

QString nights(Nights count, const QLocale& locale)
{
    return counted(QT_TRANSLATE_NOOP("Amount", "%1 night"), QT_TRANSLATE_N_NOOP("Amount", "%1 nights"),
        count.value(), locale);
}

QString days(std::chrono::days count, const QLocale& locale)
{
    return counted(QT_TRANSLATE_NOOP("Amount", "%1 day"), QT_TRANSLATE_N_NOOP("Amount", "%1 days"),
        count.count(), locale);
}

QString perNight(MothsPerNight rate, const QLocale& locale)
{
    const double value = rate.value();
    if (value > 0.0 && value < 0.05)
        //: of a rate: less than a tenth of a moth a night
        return QCoreApplication::translate("Amount", "under %1 a night").arg(rounded(0.1, 1, locale));
    return QCoreApplication::translate("Amount", "%1 a night")
        .arg(rounded(value, value < 99.95 ? 1 : 0, locale));
}

QString soFar(Moths count, const QLocale& locale)
{
    return QCoreApplication::translate("Amount", "%1 so far").arg(number(count.value(), locale));
}

QString atLeast(Moths count, const QLocale& locale)
{
    return QCoreApplication::translate("Amount", "at least %1").arg(number(count.value(), locale));
}

QString range(Moths low, Moths high, const QLocale& locale)
{
    return QCoreApplication::translate("Amount", "%1 to %2")
        .arg(number(low.value(), locale), number(high.value(), locale));
}

QString height(Millimetres value, const QLocale& locale)
{
    return QCoreApplication::translate("Amount", "%1 cm").arg(number(centimetres(value), locale));
}

QString clearance(Millimetres value, const QLocale& locale)
{
    const qint64 cm = centimetres(value);
    if (cm > 0) return QCoreApplication::translate("Amount", "%1 cm clear").arg(number(cm, locale));
    if (cm == 0) return QCoreApplication::translate("Amount", "level with the canopy");
    return QCoreApplication::translate("Amount", "%1 cm below the canopy").arg(number(-cm, locale));
}

QString distance(Metres value, const QLocale& locale)
{
    const double metres = value.value();
    if (metres < 999.5) return QCoreApplication::translate("Amount", "%1 m").arg(rounded(metres, 0, locale));
    const double kilometres = metres / 1000.0;
    return QCoreApplication::translate("Amount", "%1 km")
        .arg(rounded(kilometres, kilometres < 9.95 ? 1 : 0, locale));
}

QString accuracy(Metres value, const QLocale& locale)
{
    // Rounded up: a position is never called better than it is.
    return QCoreApplication::translate("Amount", "within %1")
        .arg(distance(Metres{std::ceil(value.value())}, locale));
}

QDate calendarDay(LocalDay day)
{
    const std::chrono::year_month_day parts{day};
    return {static_cast<int>(parts.year()), static_cast<int>(static_cast<unsigned>(parts.month())),
        static_cast<int>(static_cast<unsigned>(parts.day()))};
}

QString day(LocalDay day, const QLocale& locale)
{
    //: a day of this year; see QLocale::toString for the letters
    return locale.toString(calendarDay(day), QCoreApplication::translate("Amount", "dddd d MMMM"));
}

QString dayAndYear(LocalDay day, const QLocale& locale)
{
    return locale.toString(calendarDay(day), QCoreApplication::translate("Amount", "dddd d MMMM yyyy"));
}

QString shortDay(LocalDay day, const QLocale& locale)
{
    return locale.toString(calendarDay(day), QCoreApplication::translate("Amount", "d MMM"));
}

QString weekday(int iso, const QLocale& locale)
{
    return locale.standaloneDayName(iso);
}

QString timeOfDay(int minute, const QLocale& locale)
{
    const QTime time(minute / 60, minute % 60);
    // The C locale has seconds even in its short form.
    if (locale.language() == QLocale::C) return time.toString(QStringLiteral("HH:mm"));
    return locale.toString(time, QLocale::ShortFormat);
}

} // namespace duskrow::text
