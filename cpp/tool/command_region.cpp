// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

#include "store/season_years.h"
#include "text/amounts.h"
#include "tool/commands.h"
#include "tool/output.h"
#include "tool/region_json.h"
#include "tool/season_asked.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

struct RegionLine {
    SeasonAsked asked;
    std::string protocols;
    bool asJson = false;
};

QString amount(double moths)
{
    return QLocale().toString(moths, 'f', moths < 10 && moths != static_cast<int>(moths) ? 1 : 0);
}

QString orNothing(const CatchSpread& spread, double moths)
{
    return spread.traps == 0 ? QStringLiteral("–") : amount(moths);
}

QString middleHalf(const CatchSpread& spread)
{
    if (spread.traps == 0) return QStringLiteral("–");
    return said(QT_TRANSLATE_NOOP("Tool", "%1 to %2"))
        .arg(amount(spread.lowerQuartile), amount(spread.upperQuartile));
}

QStringList seasonRow(const SeasonRecords& records, const DistrictSeason& district, const QString& name)
{
    const RegionSeason& season = district.season;
    QStringList row{name, QString::number(season.catches.traps), QString::number(season.minimum),
        QString::number(season.uncounted), orNothing(season.catches, season.catches.median),
        middleHalf(season.catches), orNothing(season.catches, season.catches.highest),
        district.highest ? records.title(*district.highest) : QStringLiteral("–")};
    return row;
}

QString nameOf(const SeasonRecords& records, const DistrictSeason& district)
{
    const auto found = records.names.find(district.district);
    return found == records.names.end() ? said(QT_TRANSLATE_NOOP("Tool", "no district")) : found->second;
}

void printSeason(const SeasonRecords& records, const RegionOfKind& region)
{
    QStringList head{said(QT_TRANSLATE_NOOP("Tool", "district")),
        said(QT_TRANSLATE_NOOP("Tool", "counted in full")), said(QT_TRANSLATE_NOOP("Tool", "a minimum")),
        said(QT_TRANSLATE_NOOP("Tool", "not counted")), said(QT_TRANSLATE_NOOP("Tool", "median")),
        said(QT_TRANSLATE_NOOP("Tool", "middle half")), said(QT_TRANSLATE_NOOP("Tool", "highest")),
        said(QT_TRANSLATE_NOOP("Tool", "at the trap"))};
    std::vector<int> numbers{1, 2, 3, 4, 5, 6};
    // Bands are for whole seasons: before there is one, nothing is in any.
    const auto& inBand = region.result.whole.season.inBand;
    const bool hasBands =
        std::any_of(inBand.begin(), inBand.end(), [](std::size_t traps) { return traps > 0; });
    for (const Band& band : region.bands) {
        if (!hasBands) break;
        numbers.push_back(static_cast<int>(head.size()));
        head << inLanguage(band.name);
    }
    std::vector<QStringList> rows;
    const auto add = [&](const DistrictSeason& district, const QString& name) {
        QStringList row = seasonRow(records, district, name);
        if (hasBands)
            for (const std::size_t traps : district.season.inBand) row << QString::number(traps);
        rows.push_back(std::move(row));
    };
    for (const DistrictSeason& district : region.result.districts) add(district, nameOf(records, district));
    add(region.result.whole, said(QT_TRANSLATE_NOOP("Tool", "all")));
    printTable(head, rows, numbers);
}

// The median of each week and of how many traps, for the last weeks.
void printWeeks(const SeasonRecords& records, const RegionOfKind& region)
{
    constexpr std::size_t most = 6;
    const auto& weeks = region.result.whole.season.weeks;
    const std::size_t first = weeks.size() > most ? weeks.size() - most : 0;
    QStringList head{said(QT_TRANSLATE_NOOP("Tool", "median of the week to"))};
    std::vector<int> numbers;
    for (std::size_t i = first; i < weeks.size(); ++i) {
        numbers.push_back(static_cast<int>(head.size()));
        head << text::shortDay(weeks[i].week.last);
    }
    const auto rowOf = [&](const QString& name, const RegionSeason& season) {
        QStringList row{name};
        for (std::size_t i = first; i < weeks.size(); ++i) {
            const auto found = std::find_if(season.weeks.begin(), season.weeks.end(),
                [&](const RegionWeek& week) { return week.week == weeks[i].week; });
            const bool isKnown = found != season.weeks.end() && found->catches.traps > 0;
            row << (isKnown ? said(QT_TRANSLATE_NOOP("Tool", "%1 of %2"))
                                  .arg(amount(found->catches.median), QString::number(found->catches.traps))
                            : QStringLiteral("–"));
        }
        return row;
    };
    std::vector<QStringList> rows;
    for (const DistrictSeason& district : region.result.districts)
        rows.push_back(rowOf(nameOf(records, district), district.season));
    rows.push_back(rowOf(said(QT_TRANSLATE_NOOP("Tool", "all")), region.result.whole.season));
    printTable(head, rows, numbers);
    print(said(QT_TRANSLATE_NOOP("Tool",
        "Each count is shared out over its nights. A bulletin takes only full counts of seven nights, made "
        "round: its medians may differ.")));
}

// Whether anything can be said of places between the traps.
QString surfaceWords(const SurfaceOfRegion& of)
{
    const RegionalSurface& surface = of.surface;
    const QString gain = QLocale().toString(
        surface.errorByMean > 0 ? 100 * (1 - surface.errorByNeighbours / surface.errorByMean) : 0, 'f', 0);
    switch (surface.standing) {
    case SurfaceStanding::TooFewTraps:
        return said(QT_TRANSLATE_NOOP("Tool",
                        "Between the traps nothing is drawn: %1 traps with a place and a full count are "
                        "fewer than 20."))
            .arg(surface.traps);
    case SurfaceStanding::AllEqual:
        return said(QT_TRANSLATE_NOOP("Tool", "Between the traps nothing is drawn: all caught the same."));
    case SurfaceStanding::NoPattern:
        return said(QT_TRANSLATE_NOOP("Tool",
                        "Between the traps nothing is drawn: what a trap catches is told by its neighbours "
                        "only %1 % better than "
                        "by the mean of all; 5 % is the least."))
            .arg(gain);
    case SurfaceStanding::Drawn:
        break;
    }
    return said(QT_TRANSLATE_NOOP("Tool",
                    "Between the traps a surface may be drawn: neighbours tell what a trap catches %1 % "
                    "better than the mean of "
                    "all. Larvae vary between neighbouring fields all the same."))
        .arg(gain);
}

void printRegion(const SeasonRecords& records, const RegionOfKind& region)
{
    print(QStringLiteral("%1 · %2").arg(
        inLanguage(region.protocol->name), QString::fromStdString(region.trapType)));
    printSeason(records, region);
    print(QString());
    printWeeks(records, region);
    print(surfaceWords(region.surface));
    for (const Statement& caution : region.protocol->cautionsAt(CautionPlace::Counting))
        print(inLanguage(caution.text));
}

Result<int> sayRegion(const RegionLine& line)
{
    const auto seen = lookAt(line.asked);
    if (!seen) return seen.error();
    const LocalDay today = seen->today;
    const auto records = namedRecords(*seen->reader, seen->season, store::VisitsFor::Catch);
    if (!records) return records.error();
    ProtocolShelf shelf(line.protocols);
    const auto results = trapResults(*records, today, shelf);
    if (!results) return results.error();
    const auto regions = regionResults(*records, *results, today);
    if (line.asJson) {
        std::vector<std::vector<RegionYear>> years;
        for (const RegionOfKind& region : regions) {
            auto of = store::regionYears(*seen->reader, *region.protocol, {region.pest, region.trapType},
                today, [](int) { return true; });
            if (!of) return of.error();
            years.push_back(std::move(*of));
        }
        print(QString::fromStdString(regionJson(*records, regions, years, today)));
        return 0;
    }
    print(seasonHead(seen->season, today));
    for (const RegionOfKind& region : regions) printRegion(*records, region);
    print(said(QT_TRANSLATE_NOOP("Tool", "For the desk: it names traps. Publish none of it as it stands.")));
    return 0;
}

} // namespace

Work declareRegion(CLI::App& line)
{
    const auto typed = std::make_shared<RegionLine>();
    addSeason(line, typed->asked);
    line.add_flag("--json", typed->asJson,
        "For other programs: JSON with all weeks and years, and the surface's cells");
    addProtocols(line, typed->protocols);
    return [typed] { return sayRegion(*typed); };
}

} // namespace duskrow::tool
