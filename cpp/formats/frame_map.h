// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/base/units.h"
#include "formats/picture.h"

namespace duskrow::formats {

// One frame of a scouting walk on the sketch.
struct FrameSpot {
    std::string number; // as it stands in the table: "7"
    std::optional<domain::GeoPoint> place; // nothing where the frame does not know it
    std::optional<domain::Larvae> larvae; // nothing where it was not searched to the end
};

// A sketch of where frames were searched, to scale, north up. All words come translated.
struct FrameMapInput {
    double width = 360;
    double height = 260;
    double textScale = 1; // 1 to 2
    std::vector<FrameSpot> frames = {}; // in the order walked
    std::string title = {};
    std::string description = {};
    std::string northLabel = {}; // "N"
    std::string keyLabel = {}; // how to read a mark: "small: frame, bold: larvae"
    std::string noPlaceLabel = {}; // in place of the sketch when no frame knows its place
    std::string crowdedLabel = {}; // in place of the key when a mark has no room for its number
};

// The longest round length, in metres, that is no longer than this: 1, 2 or 5 and noughts; 1 at least.
double roundLength(domain::Metres most);

// Nothing is drawn below 120 x 120, and no key where it would take the room of the sketch. Frames without a
// place are left out. A single frame, or several within a few paces, are drawn at a scale of a field and not
// of a pace.
//
// Source  offsets by domain/rules/local_plane.h
Picture frameMap(const FrameMapInput& input);

} // namespace duskrow::formats
