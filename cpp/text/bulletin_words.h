// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace duskrow::text {

// One line of the table of areas, in the order of its columns: traps counted, median of the week, median of
// the season so far, typical band, highest band, flight. All empty but the name where it may not be shown.
struct AreaWords {
    std::string name;
    std::vector<std::string> cells; // six, or none
    std::string reason; // in the stead of cells: why there are none
};

// Everything that a bulletin says in words, in one language, ready to be laid out: plain text, UTF-8, never
// markup. Made by bulletinWords; a coordinator may put other paragraphs in the stead of the drafted ones.
struct BulletinWords {
    std::string language; // BCP 47
    std::string title; // "Bertha armyworm: week 28 of 2026"
    std::string dates; // "5 Jul to 11 Jul 2026"
    std::string programme; // "Valley programme, Example district"
    std::string issue; // that this one replaces an earlier of the week; empty for the first
    std::string notice; // that the district is invented; empty otherwise
    std::string summary; // one sentence, for lists of bulletins
    std::vector<std::string> paragraphs; // drafted from the data, or the coordinator's own
    std::string toDoHeading;
    std::vector<std::string> toDo;
    std::vector<std::string> cautions;
    std::string privacyHeading;
    std::vector<std::string> privacy;

    std::string districtsHeading;
    std::vector<std::string> columns; // seven, the name first
    std::vector<AreaWords> districts; // the whole region first
    std::string cellsHeading;
    std::vector<std::string> cellColumns; // place, typical band, highest band
    std::vector<AreaWords> cells; // three cells less the name

    std::string mapHeading;
    std::string mapDescription;
    std::string mapEmpty; // where there is nothing to draw
    std::string north; // "N"
    std::string unknownLabel; // "held back, or no trap"
    std::string cellLabel; // "cell of 0.1 degree"
    std::vector<std::string> bands; // names, the lowest first
    std::string chartHeading;
    std::string chartDescription;
    std::vector<std::string> weeks; // one for each bar: "28 Jun"
    std::vector<std::string> weekMedians;
    std::string weekColumn;
    std::string medianColumn;
    std::string gapLabel; // "not published"

    std::string generalization; // for other programs: what was made coarse
    std::string withheld; // and what was left out
    std::string filesHeading;
    std::string pestName;
    std::string latin;
};

} // namespace duskrow::text
