// SPDX-License-Identifier: MIT
#pragma once

#include "formats/map/map_ground.h"
#include "formats/map/region_scene.h"

namespace duskrow::formats {

// Everything a desk's map says in words, translated.
struct RegionWords {
    std::string title;
    std::string description;
    std::string north; // "N"
    std::vector<std::string> bands; // the lowest first; none where nobody published any
    std::string noBand; // for a trap's colour where there are none
    std::string atLeast;
    std::string missing;
    std::string bySize; // what the size of a sign says
    std::string chances; // what the ground's colour is the chance of; empty without a surface
    std::vector<std::string> chanceSteps; // four
    std::string littleKnown;
    std::string notKnown;
};

// A region for the desk alone: ground, chances of the surface, overlays, graticule, traps, scale bar and
// north. Traps as circles that grow with the catch, by the colour of their band and its dots: full when
// counted, hollow for a minimum, a diamond when nobody counted. Where traps lie too thick for dots, they are
// left out until one looks nearer. Only what is seen is drawn.
//
// textScale  1 to 2
Picture regionPicture(const RegionScene& scene, const MapGround& ground, const MapView& view,
    const RegionWords& words, double textScale);

// The key of such a map, by itself.
Picture regionKey(const RegionWords& words, double width, double textScale);

// The map with its key below it: a sheet to be kept.
Picture regionSheet(const RegionScene& scene, const MapGround& ground, const MapView& view,
    const RegionWords& words, double textScale);

// The trap that is meant by a touch: the nearest, if it is within a finger's breadth.
std::optional<std::size_t> trapAt(const RegionScene& scene, const MapView& view, Point point);

} // namespace duskrow::formats
