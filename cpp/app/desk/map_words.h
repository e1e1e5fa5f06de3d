// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/map_book.h"
#include "app/row_list.h"
#include "formats/map/region_picture.h"
#include "text/animal.h"

namespace duskrow::app {

// "Bertha armyworm · green bucket trap"
QString kindWords(const MapKind& kind, const domain::Protocol* protocol);

// "71 of 84 counted for this week, 3 at least, 2 without a place"
QString weekWords(const MapWeek& week);

// "at least 140 moths so far"
QString caughtWords(const domain::TrapSeason& season, const text::Animal& animal);

// The band that a trap's catch has reached, and that it may rise; empty where there is none.
QString bandWords(const TrapOfMap& trap);

// What is said of the chosen trap.
std::vector<Row> trapRows(const MapBook& book, const MapWeek& week, const TrapOfMap& trap);

// What lies between the traps, or why nothing is drawn there.
QString surfaceWords(const domain::SurfaceOfRegion& surface);

// "Areas: 12, lines: 3"
QString overlayWords(const formats::Overlay& overlay);

// edge     the catch that the surface is of; empty without one
// isSoFar  of seasons that still go on
formats::RegionWords regionWords(const MapWeek* week, const QString& kind, const QString& edge, bool isSoFar);

} // namespace duskrow::app
