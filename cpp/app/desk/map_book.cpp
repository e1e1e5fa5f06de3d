// SPDX-License-Identifier: MIT
#include "app/desk/map_book.h"

#include <algorithm>

#include "app/trap_words.h"
#include "domain/base/take.h"
#include "domain/bulletin/week_report.h"
#include "domain/rules/bands.h"
#include "domain/rules/protocol_rules.h"
#include "domain/rules/trap_place.h"
#include "domain/rules/trap_season_on.h"
#include "domain/rules/week_desk.h"

namespace duskrow::app {

using namespace duskrow::domain;

Result<MapBook> MapBook::read(store::Reader& reader, const Season& season, LocalDay today)
{
    MapBook book;
    if (auto error = take(store::seasonRecords(reader, season, store::VisitsFor::Catch), book.m_records))
        return *error;
    const auto districts = store::districts(reader);
    if (!districts) return districts.error();
    for (const District& district : *districts)
        book.m_districts[district.id] = QString::fromStdString(district.name);
    book.m_rhythm = seasonWeekOf(season).value_or(SeasonWeek{});
    book.findKinds();
    book.findWeeks(today);
    book.findPlane(today);
    return book;
}

void MapBook::findKinds()
{
    std::map<std::pair<std::string, std::string>, std::vector<std::size_t>> kinds;
    for (std::size_t i = 0; i < m_records.traps.size(); ++i)
        kinds[{m_records.traps[i].pest, m_records.traps[i].trapType}].push_back(i);
    for (auto& [kind, traps] : kinds) m_kinds.push_back({kind.first, kind.second, std::move(traps)});
    std::ranges::stable_sort(m_kinds, std::greater{}, [](const MapKind& kind) { return kind.traps.size(); });
}

void MapBook::findWeeks(LocalDay today)
{
    const ReportingWeek last = weekToSettle(today, m_rhythm);
    LocalDay first = last.first;
    for (const Trap& trap : m_records.traps)
        if (trap.setDay) first = std::min(first, *trap.setDay);
    m_weeks = weeksBetween(first, last.last, m_rhythm.weekStart);
    LocalDay lastCount = first;
    for (const Visit& visit : m_records.visits)
        if (visit.day && *visit.day <= today) lastCount = std::max(lastCount, *visit.day);
    for (std::size_t i = 0; i < m_weeks.size(); ++i)
        if (countsOf(m_weeks[i], m_rhythm).first <= lastCount) m_lastCounted = i;
}

void MapBook::findPlane(LocalDay today)
{
    std::vector<GeoPoint> places;
    for (const Trap& trap : m_records.traps)
        if (const auto spot = spotOn(m_records.facts(trap), today)) places.push_back(spot->place);
    if (const auto grid = gridAround(places, 1)) m_plane = grid->plane;
}

QString MapBook::title(std::size_t trap) const
{
    const Trap& of = m_records.traps[trap];
    const Site* site = m_records.siteOf(of);
    return site ? trapTitle(*site, of) : tagWords(of);
}

QString MapBook::districtOf(std::size_t trap) const
{
    const Site* site = m_records.siteOf(m_records.traps[trap]);
    const auto found = site ? m_districts.find(site->district) : m_districts.end();
    return found == m_districts.end() ? QString() : found->second;
}

const TrapOfMap* MapWeek::of(std::size_t trap) const
{
    const auto found = std::ranges::find(traps, trap, &TrapOfMap::trap);
    return found == traps.end() ? nullptr : &*found;
}

MapWeek mapWeek(
    const MapBook& book, const MapKind& kind, std::shared_ptr<const Protocol> protocol, ReportingWeek week)
{
    MapWeek made{week, std::move(protocol), {}, {}, {}};
    const ReportingWeek days = countsOf(week, book.rhythm());
    SeasonRules rules{.weekStart = book.rhythm().weekStart, .today = days.last};
    if (made.protocol) {
        const auto& season = book.records().season;
        rules = seasonRulesOf(*made.protocol, std::chrono::year{season.year.value_or(yearOf(week.last))},
            book.rhythm().weekStart, days.last);
        if (const auto bands = bandsFor(*made.protocol, kind.trapType)) made.bands = *bands;
    }
    for (const std::size_t at : kind.traps) {
        const Trap& trap = book.records().traps[at];
        if (trap.setDay && *trap.setDay > days.last) continue;
        const TrapFacts facts = book.records().facts(trap);
        TrapOfMap of{at, trapSeasonOn(facts, rules, days.last)};
        of.isExpected =
            (!trap.setDay || *trap.setDay < days.last) && (!trap.endDay || *trap.endDay >= week.first);
        of.isCounted = std::ranges::any_of(
            of.season.visits, [&](const VisitCatch& visit) { return visit.count && days.holds(visit.day); });
        if (of.season.countedUntil && !made.bands.empty()) of.band = &bandOf(made.bands, of.season.total);
        if (const auto spot = spotOn(facts, days.last)) {
            of.place = spot->place;
            formats::SceneTrap sign{at, book.plane().offsetOf(spot->place)};
            sign.soFar = of.season.total;
            sign.level = of.band ? of.band->level : 0;
            if (of.season.isMinimum()) sign.standing = formats::TrapStanding::AtLeast;
            if (!of.season.countedUntil || (of.isExpected && !of.isCounted))
                sign.standing = formats::TrapStanding::Missing;
            made.signs.push_back(sign);
        }
        made.traps.push_back(std::move(of));
    }
    formats::putInOrder(made.signs);
    return made;
}

SurfaceOfRegion surfaceOfWeek(const MapBook& book, const MapWeek& week)
{
    constexpr std::size_t mostCells = 140; // along the longer side
    std::vector<RegionMember> members;
    members.reserve(week.traps.size());
    for (const TrapOfMap& trap : week.traps)
        members.push_back({&book.records().traps[trap.trap], &trap.season, trap.band, {}, trap.place});
    return surfaceOfRegion(members, week.bands, mostCells, book.plane());
}

} // namespace duskrow::app
