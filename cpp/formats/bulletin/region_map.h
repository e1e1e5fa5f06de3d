// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/base/units.h"
#include "domain/bulletin/grid_cell.h"
#include "formats/bulletin/overlay.h"
#include "formats/picture.h"

namespace duskrow::formats {

// A district with its boundary. Without a level it is hatched: nothing may be said, or nothing is known.
struct MapDistrict {
    std::string name;
    std::vector<Polygon> polygons;
    std::optional<int> level; // 1 to 4, as many dots
};

struct MapCell {
    domain::GridCell cell;
    std::optional<int> level;
};

enum class TrapStanding { Counted, AtLeast, Missing };

// One trap, for the desk alone.
struct MapTrap {
    domain::GeoPoint place;
    TrapStanding standing = TrapStanding::Counted;
    domain::Moths soFar;
    std::optional<int> level;
};

// A region to scale, north up. All words come translated.
struct RegionMapInput {
    double width = 420;
    double textScale = 1; // 1 to 2
    std::vector<MapDistrict> districts = {};
    std::vector<MapCell> cells = {};
    std::vector<std::vector<LonLat>> lines = {};
    std::vector<MapTrap> traps = {}; // empty for the public
    std::string title = {};
    std::string description = {};
    std::string north = {}; // "N"
    std::string empty = {}; // in place of the map when there is nothing to draw
    std::vector<std::string> bands = {}; // names for the key, the lowest first
    std::string unknownLabel = {}; // for the hatched
    std::string cellLabel = {}; // for the cells' outline
    std::string atLeastLabel = {}; // for the desk's traps
    std::string missingLabel = {};
};

// Districts and cells take the colour of their level and its dots, so that no meaning hangs on colour;
// traps of the desk as circles that grow with the catch: full when counted, hollow for a minimum, a small
// diamond when nobody counted. With graticule, scale bar and key. Its height follows from what it shows.
//
// The scale is true in the middle; meridians and parallels are straight lines, as is fair for a few hundred
// kilometres.
Picture regionMap(const RegionMapInput& input);

} // namespace duskrow::formats
