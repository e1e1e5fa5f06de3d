// SPDX-License-Identifier: MIT
#pragma once

#include "domain/bulletin_scene.h"
#include "formats/bulletin/document.h"

// A bulletin of two districts and a cell, with names as somebody hostile would write them.
namespace duskrow::tests {

inline const char* const hostileName = "=cmd|' /C calc'!A1 <script>alert(1)</script> \"&\x01]]>";

inline domain::Bulletin someBulletin(const std::string& district = "Valley")
{
    using namespace duskrow::domain;
    Bulletin bulletin;
    bulletin.programme = district + " programme";
    bulletin.region = district;
    bulletin.pest = "bertha-armyworm";
    bulletin.trapType = "green-bucket";
    bulletin.bands = fourBands();
    bulletin.iso = {2026, 28};
    bulletin.week = *weekFromIso(bulletin.iso, std::chrono::Sunday);
    std::vector<WeekReport> reports;
    for (int i = 0; i < 6; ++i) reports.push_back(reported(i, 0, {521, -1067}, 20.0 + i, 350 + i));
    for (int i = 6; i < 12; ++i) reports.push_back(reported(i, 1, {523, -1060 + i}, 0, 0));
    for (int i = 12; i < 14; ++i) reports.push_back(reported(i, 2, {530, -1060}, 900, 900));
    for (int i = 14; i < 19; ++i) reports.push_back(reported(i, 3, {531, -1060 + i}, 1, 10));
    const std::vector<std::string> names{district, "Empty Hills", "Hidden", "Lower"};
    fillIn(bulletin, reports, names, areasOf(reports));
    bulletin.weeks.push_back({*weekFromIso({2026, 27}, std::chrono::Sunday), Moths{14}});
    return bulletin;
}

inline text::BulletinWords someWords(const domain::Bulletin& bulletin)
{
    text::BulletinWords words;
    words.language = "en";
    words.title = bulletin.region + ": week 28 of 2026";
    words.dates = "5 Jul to 11 Jul 2026";
    words.programme = bulletin.programme;
    words.summary = "About " + bulletin.region;
    words.paragraphs = {bulletin.region};
    words.toDoHeading = "What to do now";
    words.toDo = {"Look"};
    words.cautions = {"Never"};
    words.privacyHeading = "Private";
    words.privacy = {"Nothing"};
    words.districtsHeading = "Districts";
    words.columns = {"District", "In", "Week", "Season", "Band", "Highest", "Flight"};
    for (const domain::DistrictWeek& district : bulletin.districts)
        words.districts.push_back({district.name,
            district.figures ? std::vector<std::string>(6, district.name) : std::vector<std::string>(),
            district.figures ? "" : "fewer than 5"});
    words.cellsHeading = "Cells";
    words.cellColumns = {"Middle", "Band", "Highest"};
    for (std::size_t i = 0; i < bulletin.cells.size(); ++i)
        words.cells.push_back({"52.15", {"Low", "High"}, {}});
    words.mapHeading = "Map of " + bulletin.region;
    words.mapDescription = "A map";
    words.mapEmpty = "No map";
    words.north = "N";
    words.unknownLabel = "unknown";
    words.cellLabel = "cell";
    words.bands = {"Low", "Uncertain", "Moderate", bulletin.region};
    words.chartHeading = "Weeks";
    words.chartDescription = "Bars";
    words.weeks = {"28 Jun", "5 Jul"};
    words.weekMedians = {"about 14", "about 2"};
    words.weekColumn = "Week";
    words.medianColumn = "Median";
    words.generalization = "=made coarse";
    words.withheld = "Names";
    words.filesHeading = "Files";
    words.pestName = "Bertha armyworm";
    words.latin = "Mamestra configurata";
    return words;
}

} // namespace duskrow::tests
