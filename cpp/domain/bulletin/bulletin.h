// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "domain/bulletin/disclosure.h"
#include "domain/bulletin/week_report.h"
#include "domain/protocol/pest_rules.h"

namespace duskrow::domain {

// A catch made round so that it is nobody's: in steps of 2 below 20, of 5 below 100, of 10 below 1,000 and of
// 50 above. What is not zero is never rounded to it.
Moths madeRound(double moths);

// What is said of one area: never a sum, never one trap's figure. Medians and bands do not add up, so that no
// difference between areas or weeks can be taken of them.
struct AreaFigures {
    std::size_t counted = 0; // traps that somebody counted this week
    std::size_t expected = 0; // traps that stood out
    Moths weekMedian; // of the traps counted in full, in seven nights, made round
    Moths seasonMedian; // of the same traps, of the season so far, made round
    bool caughtAny = false; // any of them this week
    // Levels of bands that seasons have reached so far; they can only rise. Nothing where there are no bands.
    std::optional<int> typicalLevel; // of the median
    std::optional<int> highestLevel;
    FlightPhase phase = FlightPhase::NotKnown; // of the most traps

    bool operator==(const AreaFigures&) const = default;
};

struct DistrictWeek {
    std::string name;
    std::optional<AreaFigures> figures; // nothing where fewer than five farms report
};

struct CellWeek {
    GridCell cell;
    Metres uncertainty;
    AreaFigures figures;
};

// Traps whose season has reached bands from one level to another; none, or of five farms and more.
struct BandGroup {
    int lowest = 1;
    int highest = 1;
    std::size_t traps = 0;

    bool operator==(const BandGroup&) const = default;
};

// The median of an earlier week of the season, as it was published then; nothing for a week that was not.
struct PublishedWeek {
    ReportingWeek week;
    std::optional<Moths> median;
};

// One week of one pest in one region, as anybody may read it. There is no name of a person, farm, site or
// trap in it and no place but the cells'.
struct Bulletin {
    std::string programme;
    std::string region;
    bool isInvented = false;
    std::string pest; // protocol id
    std::string trapType;
    std::vector<Band> bands; // none where nobody published any for the trap type
    IsoWeek iso;
    ReportingWeek week;
    int issue = 1; // of this week; each replaces the one before as a whole
    std::optional<AreaFigures> whole; // nothing where fewer than five farms report at all
    std::vector<BandGroup> bandGroups; // of the whole, the lowest first
    std::vector<DistrictWeek> districts; // every one, in the order given
    std::vector<CellWeek> cells; // those published, from south to north
    std::vector<PublishedWeek> weeks; // earlier ones of the season, from the first published on
};

// Fills what follows from the reports: whole, band groups, districts and cells.
//
// bulletin  with its bands
// names     of the districts, by their numbers
// areas     as publishedAreas gives them for the reports with moths
void fillIn(Bulletin& bulletin, std::span<const WeekReport> reports, std::span<const std::string> names,
    const PublishedAreas& areas);

// The areas that may be published: only traps counted in full speak in figures, so only they are reporters.
PublishedAreas areasOf(std::span<const WeekReport> reports, const PublishedAreas* within = nullptr);

} // namespace duskrow::domain
