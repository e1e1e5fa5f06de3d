// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <map>
#include <memory>

#include "domain/protocol/protocol.h"
#include "domain/rules/region_result.h"
#include "domain/rules/season_week.h"
#include "formats/map/region_scene.h"
#include "store/season_records.h"

namespace duskrow::app {

// The traps of one pest and trap type: another type catches differently and is shown by itself.
struct MapKind {
    std::string pest;
    std::string trapType;
    std::vector<std::size_t> traps; // their places among the records

    [[nodiscard]] QString key() const { return QString::fromStdString(pest + '/' + trapType); }
};

// A season as a map shows it: read on another thread, then asked for any week.
class MapBook {
public:
    // Errors  as in queries.h
    static domain::Result<MapBook> read(
        store::Reader& reader, const domain::Season& season, domain::LocalDay today);

    [[nodiscard]] const store::SeasonRecords& records() const { return m_records; }
    [[nodiscard]] const domain::SeasonWeek& rhythm() const { return m_rhythm; }
    [[nodiscard]] const std::vector<MapKind>& kinds() const { return m_kinds; } // with the most traps first
    // From the first in which a trap stood to the one that is to be settled now.
    [[nodiscard]] const std::vector<domain::ReportingWeek>& weeks() const { return m_weeks; }
    // The last that has a count: a map is opened on it.
    [[nodiscard]] std::size_t lastCounted() const { return m_lastCounted; }
    [[nodiscard]] const domain::RegionalPlane& plane() const { return m_plane; } // one for all weeks
    [[nodiscard]] QString title(std::size_t trap) const; // "Slough corner · bertha 1"
    [[nodiscard]] QString districtOf(std::size_t trap) const; // empty for none

private:
    void findKinds();
    void findWeeks(domain::LocalDay today);
    void findPlane(domain::LocalDay today);

    store::SeasonRecords m_records;
    std::map<domain::Uuid, QString> m_districts;
    domain::SeasonWeek m_rhythm;
    std::vector<MapKind> m_kinds;
    std::vector<domain::ReportingWeek> m_weeks;
    std::size_t m_lastCounted = 0;
    domain::RegionalPlane m_plane{domain::GeoPoint{}};
};

// A trap in one week of the map.
struct TrapOfMap {
    std::size_t trap = 0; // its place among the records
    domain::TrapSeason season; // as it was known at the end of the week
    const domain::Band* band = nullptr; // that the catch so far has reached
    std::optional<domain::GeoPoint> place = {};
    bool isExpected = false; // it stood in this week
    bool isCounted = false; // in this week
};

// A week of one kind of traps. Bands belong to the protocol, which it keeps.
struct MapWeek {
    domain::ReportingWeek week;
    std::shared_ptr<const domain::Protocol> protocol; // null where there is none
    std::span<const domain::Band> bands; // none where nobody published any
    std::vector<TrapOfMap> traps; // that were set up by then
    std::vector<formats::SceneTrap> signs; // of those with a place, as they are drawn

    [[nodiscard]] const TrapOfMap* of(std::size_t trap) const;
};

MapWeek mapWeek(const MapBook& book, const MapKind& kind, std::shared_ptr<const domain::Protocol> protocol,
    domain::ReportingWeek week);

domain::SurfaceOfRegion surfaceOfWeek(const MapBook& book, const MapWeek& week);

} // namespace duskrow::app
