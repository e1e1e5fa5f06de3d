// SPDX-License-Identifier: MIT
#include "app/desk/map_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

#include "app/session.h"
#include "app/trap_words.h"
#include "text/amounts.h"
#include "text/desk_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct Map {
    Q_DECLARE_TR_FUNCTIONS(Map)
};

QString fromProtocol(const LocalText& text)
{
    return QString::fromStdString(text.in(Session::language()));
}

std::size_t countOf(const MapWeek& week, bool (*holds)(const TrapOfMap&))
{
    return static_cast<std::size_t>(std::ranges::count_if(week.traps, holds));
}

QString standingWords(const TrapOfMap& trap)
{
    if (!trap.isExpected) return Map::tr("was down already");
    return trap.isCounted ? Map::tr("counted") : Map::tr("nobody counted it");
}

QString spoken(const MapWeek& week, const QString& kind)
{
    const auto highest =
        std::ranges::max_element(week.traps, {}, [](const TrapOfMap& trap) { return trap.season.total; });
    QString said = Map::tr("Map of %1, week %2: %3.").arg(kind, text::weekDays(week.week), weekWords(week));
    if (highest != week.traps.end())
        said += QLatin1Char(' ')
            + Map::tr("The highest catch so far: %1.")
                  .arg(caughtWords(highest->season, animalOf(week.protocol.get())));
    return said;
}

} // namespace

QString kindWords(const MapKind& kind, const Protocol* protocol)
{
    const TrapType* type = protocol ? protocol->trapType(kind.trapType) : nullptr;
    const QString pest = protocol ? fromProtocol(protocol->name) : QString::fromStdString(kind.pest);
    const QString trap = type ? fromProtocol(type->name) : QString::fromStdString(kind.trapType);
    return trap.isEmpty() ? pest : QStringLiteral("%1 · %2").arg(pest, trap);
}

QString weekWords(const MapWeek& week)
{
    const auto expected = countOf(week, [](const TrapOfMap& trap) { return trap.isExpected; });
    const auto counted =
        countOf(week, [](const TrapOfMap& trap) { return trap.isExpected && trap.isCounted; });
    const auto placeless = countOf(week, [](const TrapOfMap& trap) { return !trap.place; });
    const QLocale locale;
    QString words = Map::tr("%1 of %2 traps counted for this week")
                        .arg(locale.toString(static_cast<qulonglong>(counted)),
                            locale.toString(static_cast<qulonglong>(expected)));
    if (placeless > 0)
        words += QStringLiteral(", ")
            + Map::tr("%1 without a place").arg(locale.toString(static_cast<qulonglong>(placeless)));
    return words;
}

QString caughtWords(const TrapSeason& season, const text::Animal& animal)
{
    if (!season.countedUntil) return Map::tr("not counted yet");
    return season.isMinimum() ? text::atLeast(season.total) : animal.amount(season.total);
}

QString bandWords(const TrapOfMap& trap)
{
    if (!trap.band) return {};
    const QString name = fromProtocol(trap.band->name);
    return trap.season.takesBand() && !trap.season.isMinimum() ? name : Map::tr("%1 so far").arg(name);
}

std::vector<Row> trapRows(const MapBook& book, const MapWeek& week, const TrapOfMap& trap)
{
    std::vector<Row> rows;
    rows.push_back({.title = Map::tr("Catch so far"),
        .besides = caughtWords(trap.season, animalOf(week.protocol.get()))});
    rows.push_back({.title = text::weekDays(week.week), .besides = standingWords(trap)});
    if (trap.season.countedUntil)
        rows.push_back(
            {.title = Map::tr("Last counted"), .besides = text::shortDay(*trap.season.countedUntil)});
    if (const QString district = book.districtOf(trap.trap); !district.isEmpty())
        rows.push_back({.title = Map::tr("District"), .besides = district});
    return rows;
}

QString surfaceWords(const SurfaceOfRegion& of)
{
    const RegionalSurface& surface = of.surface;
    const double part =
        surface.errorByMean > 0 ? 100 * (1 - surface.errorByNeighbours / surface.errorByMean) : 0;
    const QString gain = QLocale().toString(part, 'f', 0);
    switch (surface.standing) {
    case SurfaceStanding::TooFewTraps:
        return Map::tr("Traps alone: %1 with a place and a full count are fewer than the 20 that it takes to "
                       "say anything of what lies between.")
            .arg(surface.traps);
    case SurfaceStanding::AllEqual:
        return Map::tr("Traps alone: all caught the same.");
    case SurfaceStanding::NoPattern:
        return Map::tr(
            "Traps alone: neighbours tell what a trap catches only %1 % better than the mean of all. "
            "5 % is the least.")
            .arg(gain);
    case SurfaceStanding::Drawn:
        break;
    }
    return Map::tr(
        "Neighbours tell what a trap catches %1 % better than the mean of all. Larvae vary between "
        "neighbouring fields all the same.")
        .arg(gain);
}

QString overlayWords(const formats::Overlay& overlay)
{
    return Map::tr("Areas: %1, lines: %2").arg(overlay.areas.size()).arg(overlay.lines.size());
}

formats::RegionWords regionWords(const MapWeek* week, const QString& kind, const QString& edge, bool isSoFar)
{
    const auto plain = [](const QString& words) { return words.toStdString(); };
    formats::RegionWords words;
    //: the letter on a map's arrow
    words.north = plain(Map::tr("N"));
    if (!week) return words;
    words.title = plain(Map::tr("%1, %2").arg(kind, text::weekDays(week->week)));
    words.description = plain(spoken(*week, kind));
    for (const Band& band : week->bands) words.bands.push_back(plain(fromProtocol(band.name)));
    words.noBand = plain(Map::tr("counted"));
    words.atLeast = plain(Map::tr("at least: part was lost"));
    words.missing = plain(Map::tr("nobody counted it this week"));
    const QString many = animalOf(week->protocol.get()).many();
    //: moths, or what else is counted
    words.bySize = plain(Map::tr("The larger, the more %1 so far. Dots come where there is room.").arg(many));
    if (edge.isEmpty()) return words;
    const QString amount = QStringLiteral("%1 %2").arg(QLocale().toString(edge.toLongLong()), many);
    words.chances = plain(isSoFar ? Map::tr("Chance that a trap has passed %1 so far").arg(amount)
                                  : Map::tr("Chance that a season passes %1").arg(amount));
    words.chanceSteps = {
        plain(Map::tr("low")), plain(Map::tr("1 in 8")), plain(Map::tr("1 in 3")), plain(Map::tr("2 in 3"))};
    words.littleKnown = plain(Map::tr("little known"));
    words.notKnown = plain(Map::tr("not known"));
    return words;
}

} // namespace duskrow::app
