// SPDX-License-Identifier: MIT
#include "text/bulletin_text.h"

#include <QCoreApplication>

#include <algorithm>

#include "text/amounts.h"
#include "text/bulletin_draft.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct BulletinText {
    Q_DECLARE_TR_FUNCTIONS(Bulletin)
};

std::string utf8(const QString& text)
{
    return text.toStdString();
}

QString levelName(std::optional<int> level, const Bulletin& bulletin, const QLocale& locale)
{
    if (!level) return QStringLiteral("–");
    const auto at = static_cast<std::size_t>(*level - 1);
    if (at >= bulletin.bands.size()) return QStringLiteral("–");
    return QString::fromStdString(bulletin.bands[at].name.in(locale.name().toStdString()));
}

QString about(Moths median, const QLocale& locale)
{
    return median == Moths{0} ? number(0, locale)
                              : BulletinText::tr("about %1").arg(number(median.value(), locale));
}

AreaWords areaWords(const QString& name, const std::optional<AreaFigures>& figures, const Bulletin& bulletin,
    const QLocale& locale)
{
    AreaWords words{utf8(name), {}, {}};
    if (!figures) {
        words.reason = utf8(BulletinText::tr("held back, so that no farm can be told from it"));
        return words;
    }
    words.cells = {utf8(BulletinText::tr("%1 of %2")
                            .arg(number(static_cast<std::int64_t>(figures->counted), locale),
                                number(static_cast<std::int64_t>(figures->expected), locale))),
        utf8(about(figures->weekMedian, locale)), utf8(about(figures->seasonMedian, locale)),
        utf8(levelName(figures->typicalLevel, bulletin, locale)),
        utf8(levelName(figures->highestLevel, bulletin, locale)), utf8(flightStage(figures->phase))};
    return words;
}

QString degrees(double value, const QString& positive, const QString& negative, const QLocale& locale)
{
    return QStringLiteral("%1° %2").arg(
        locale.toString(std::abs(value), 'f', 2), value < 0 ? negative : positive);
}

QString placeOf(GridCell cell, const QLocale& locale)
{
    const GeoPoint centre = centreOf(cell);
    //: north, south, east and west, one letter each
    return degrees(centre.latitude(), BulletinText::tr("N"), BulletinText::tr("S"), locale)
        + QStringLiteral(", ")
        + degrees(centre.longitude(), BulletinText::tr("E"), BulletinText::tr("W"), locale);
}

void addTables(BulletinWords& words, const Bulletin& bulletin, const QLocale& locale)
{
    words.districtsHeading = utf8(BulletinText::tr("District by district: traps counted in full this week"));
    for (const QString& column : {BulletinText::tr("District"), BulletinText::tr("Traps counted"),
             BulletinText::tr("This week, median"), BulletinText::tr("Season so far, median"),
             BulletinText::tr("Band of the median"), BulletinText::tr("Highest band"),
             BulletinText::tr("Flight")})
        words.columns.push_back(utf8(column));
    words.districts.push_back(areaWords(BulletinText::tr("Whole region"), bulletin.whole, bulletin, locale));
    for (const DistrictWeek& district : bulletin.districts)
        words.districts.push_back(
            areaWords(QString::fromStdString(district.name), district.figures, bulletin, locale));
    words.cellsHeading = utf8(BulletinText::tr("Cells of a tenth of a degree"));
    words.cellColumns = {utf8(BulletinText::tr("Middle of the cell")), words.columns[4], words.columns[5]};
    for (const CellWeek& cell : bulletin.cells)
        words.cells.push_back({utf8(placeOf(cell.cell, locale)),
            {utf8(levelName(cell.figures.typicalLevel, bulletin, locale)),
                utf8(levelName(cell.figures.highestLevel, bulletin, locale))},
            {}});
}

void addMap(BulletinWords& words, const Bulletin& bulletin, const QLocale& locale)
{
    words.mapHeading = utf8(BulletinText::tr("Where the season stands"));
    std::int64_t shown = 0;
    for (const DistrictWeek& district : bulletin.districts) shown += district.figures ? 1 : 0;
    words.mapDescription = utf8(
        BulletinText::tr("A map, north up. Districts and cells take the colour and the dots of the band that "
                         "their median trap has "
                         "reached so far: one dot for the lowest band. Districts with figures: %1 of %2; "
                         "cells: %3. The table says "
                         "the same.")
            .arg(number(shown, locale), number(static_cast<std::int64_t>(bulletin.districts.size()), locale),
                number(static_cast<std::int64_t>(bulletin.cells.size()), locale)));
    words.mapEmpty = utf8(BulletinText::tr(
        "No map this week: no boundaries of districts were given, and no cell has five farms that report."));
    //: one letter for north on a map
    words.north = utf8(BulletinText::tr("N"));
    words.unknownLabel = utf8(BulletinText::tr("held back, or no trap"));
    words.cellLabel = utf8(BulletinText::tr("cell of 0.1°"));
    for (const Band& band : bulletin.bands) words.bands.push_back(band.name.in(locale.name().toStdString()));
}

void addChart(BulletinWords& words, const Bulletin& bulletin, const QLocale& locale)
{
    words.chartHeading = utf8(BulletinText::tr("Week by week"));
    words.weekColumn = utf8(BulletinText::tr("Week from"));
    words.medianColumn = utf8(BulletinText::tr("Median trap, catch in 7 nights"));
    words.gapLabel = utf8(BulletinText::tr("not published"));
    for (const PublishedWeek& week : bulletin.weeks) {
        words.weeks.push_back(utf8(shortDay(week.week.first, locale)));
        words.weekMedians.push_back(week.median ? utf8(about(*week.median, locale)) : words.gapLabel);
    }
    words.weeks.push_back(utf8(shortDay(bulletin.week.first, locale)));
    words.weekMedians.push_back(
        utf8(bulletin.whole ? about(bulletin.whole->weekMedian, locale) : QStringLiteral("–")));
    words.chartDescription = utf8(BulletinText::tr("Bars: what the median trap of the region caught in seven "
                                                   "nights, for each week that was published. The "
                                                   "table says the same."));
}

void addPrivacy(BulletinWords& words)
{
    words.privacyHeading = utf8(BulletinText::tr("How fields are kept private"));
    words.privacy = {
        utf8(BulletinText::tr(
            "Figures are given for areas in which at least 5 farms report, and for no difference "
            "between such areas that would be of fewer. Places are whole districts, or fixed cells of a "
            "tenth of a degree, of which only the middle is given.")),
        utf8(BulletinText::tr("Figures are medians and bands, made round. Of the highest trap of an area "
                              "only its band is told. "
                              "No single trap’s catch, no name and no place of a trap is in any file.")),
        utf8(BulletinText::tr(
            "A published week does not move with late counts. Where those of five farms or more have "
            "changed, the week comes out again as a new issue."))};
    words.generalization = utf8(BulletinText::tr(
        "Catches of at least 5 farms told together as a median, made round. Places of traps given as a "
        "district, or as the centre of a fixed grid cell of 0.1 degree."));
    words.withheld =
        utf8(BulletinText::tr("Places and catches of single traps; names of people, farms and fields."));
    words.filesHeading = utf8(BulletinText::tr("The same as files"));
}

} // namespace

QString flightStage(FlightPhase phase)
{
    switch (phase) {
    case FlightPhase::NoneYet:
        return BulletinText::tr("none caught yet");
    case FlightPhase::Rising:
        return BulletinText::tr("rising");
    case FlightPhase::NearHighest:
        return BulletinText::tr("near its highest");
    case FlightPhase::PastHighest:
        return BulletinText::tr("past its highest");
    case FlightPhase::NotKnown:
        break;
    }
    return BulletinText::tr("not known");
}

QString bandGroupName(const BandGroup& group, std::span<const Band> bands, const QLocale& locale)
{
    const std::string language = locale.name().toStdString();
    const auto name = [&](int level) {
        const QString plain =
            QString::fromStdString(bands[static_cast<std::size_t>(level - 1)].name.in(language));
        return plain.isEmpty() ? plain : locale.toLower(plain.left(1)) + plain.mid(1);
    };
    if (group.lowest == group.highest) return name(group.lowest);
    if (group.highest == static_cast<int>(bands.size()) && group.lowest > 1)
        return BulletinText::tr("%1 or higher").arg(name(group.lowest));
    return BulletinText::tr("%1 to %2").arg(name(group.lowest), name(group.highest));
}

std::vector<std::string> ownParagraphs(const QString& text)
{
    constexpr std::size_t most = 40;
    std::vector<std::string> paragraphs;
    QString plain = text;
    plain.replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
    for (const QString& part : plain.split(QStringLiteral("\n\n"), Qt::SkipEmptyParts)) {
        QString clean = part.simplified();
        clean.removeIf([](QChar letter) { return letter.category() == QChar::Other_Control; });
        if (!clean.isEmpty() && paragraphs.size() < most) paragraphs.push_back(clean.toStdString());
    }
    return paragraphs;
}

QString bulletinTitle(const QString& pest, IsoWeek week)
{
    //: a pest, the number of a week, a year
    return BulletinText::tr("%1: week %2 of %3")
        .arg(pest, QString::number(week.week), QString::number(week.year));
}

BulletinWords bulletinWords(const Bulletin& bulletin, const Protocol& protocol, const QLocale& locale)
{
    const std::string language = locale.name().toStdString();
    BulletinWords words;
    words.language = locale.bcp47Name().toStdString();
    words.pestName = protocol.name.in(language);
    words.latin = protocol.latin;
    words.title = utf8(bulletinTitle(QString::fromStdString(words.pestName), bulletin.iso));
    //: two days of a year
    words.dates = utf8(BulletinText::tr("%1 to %2 %3")
                           .arg(shortDay(bulletin.week.first, locale), shortDay(bulletin.week.last, locale),
                               QString::number(yearOf(bulletin.week.last))));
    words.programme = bulletin.programme + (bulletin.region.empty() ? "" : ", " + bulletin.region);
    if (bulletin.issue > 1)
        words.issue =
            utf8(BulletinText::tr("Issue %1 of this week; it replaces the one before.").arg(bulletin.issue));
    if (bulletin.isInvented)
        words.notice =
            utf8(BulletinText::tr("An invented district: its people, places and numbers are made up."));
    draftParagraphs(words, bulletin, protocol, locale);
    addTables(words, bulletin, locale);
    addMap(words, bulletin, locale);
    addChart(words, bulletin, locale);
    addPrivacy(words);
    return words;
}

} // namespace duskrow::text
