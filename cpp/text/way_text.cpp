// SPDX-License-Identifier: MIT
#include "text/way_text.h"

#include <QCoreApplication>

#include <array>

#include "text/amounts.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

constexpr Metres near{100.0}; // closer than that one sees the trap, and an arrow would only whirl

} // namespace

QString name(CompassPoint point)
{
    static constexpr std::array<const char*, 8> words{
        //: one of the eight points of the compass, as in "3.4 km to the north"
        QT_TRANSLATE_NOOP("Way", "north"), QT_TRANSLATE_NOOP("Way", "north-east"),
        QT_TRANSLATE_NOOP("Way", "east"), QT_TRANSLATE_NOOP("Way", "south-east"),
        QT_TRANSLATE_NOOP("Way", "south"), QT_TRANSLATE_NOOP("Way", "south-west"),
        QT_TRANSLATE_NOOP("Way", "west"), QT_TRANSLATE_NOOP("Way", "north-west")};
    return QCoreApplication::translate("Way", words[static_cast<std::size_t>(point)]);
}

QString wayThere(const Course& course, const QLocale& locale)
{
    const QString far = distance(course.distance, locale);
    if (!course.bearing || course.distance < near)
        return QCoreApplication::translate("Way", "You are %1 away.").arg(far);
    //: a distance and a point of the compass
    return QCoreApplication::translate("Way", "%1 to the %2.").arg(far, name(compassPoint(*course.bearing)));
}

QString wayMark(const Course& course, const QLocale& locale)
{
    static constexpr std::array<char16_t, 8> arrows{u'↑', u'↗', u'→', u'↘', u'↓', u'↙', u'←', u'↖'};
    QString far = distance(course.distance, locale);
    if (!course.bearing || course.distance < near) return far;
    const auto point = static_cast<std::size_t>(compassPoint(*course.bearing));
    return far + QLatin1Char(' ') + QChar(arrows[point]);
}

} // namespace duskrow::text
