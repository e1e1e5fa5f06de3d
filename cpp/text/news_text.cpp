// SPDX-License-Identifier: MIT
#include "text/news_text.h"

#include <QCoreApplication>

#include "text/amounts.h"
#include "text/bulletin_text.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct News {
    Q_DECLARE_TR_FUNCTIONS(News)
};

QString bandName(std::optional<int> level, std::span<const Band> bands, const QLocale& locale)
{
    for (const Band& band : bands)
        if (level && band.level == *level)
            return QString::fromStdString(band.name.in(locale.name().toStdString()));
    return {};
}

} // namespace

QString newsLine(const AreaNews& area, const QLocale& locale)
{
    if (!area.figures) return News::tr("No figures: held back, so that no farm can be told from them.");
    const AreaFigures& figures = *area.figures;
    //: traps counted, traps that stand out, moths
    return News::tr("%1 of %2 in, median %3 this week, %4 so far")
        .arg(number(static_cast<std::int64_t>(figures.counted), locale),
            number(static_cast<std::int64_t>(figures.expected), locale),
            number(figures.weekMedian.value(), locale), number(figures.seasonMedian.value(), locale));
}

QString newsBands(const AreaNews& area, std::span<const Band> bands, const QLocale& locale)
{
    if (!area.figures) return {};
    QStringList parts;
    if (const QString typical = bandName(area.figures->typicalLevel, bands, locale); !typical.isEmpty())
        parts << News::tr("Band of the median so far: %1.").arg(typical);
    if (const QString highest = bandName(area.figures->highestLevel, bands, locale); !highest.isEmpty())
        parts << News::tr("Highest band: %1.").arg(highest);
    if (area.figures->phase != FlightPhase::NotKnown)
        parts << News::tr("Flight: %1.").arg(flightStage(area.figures->phase));
    return parts.join(QChar(u' '));
}

QString newsTitle(const std::string& week)
{
    const QString written = QString::fromStdString(week);
    return News::tr("Week %1 of %2").arg(QString::number(written.mid(6).toInt()), written.left(4));
}

} // namespace duskrow::text
