// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "domain/protocol/figure.h"
#include "domain/protocol/protocol_units.h"

namespace duskrow::domain {

struct SizeClass {
    std::string id;
    LocalText name;
    Millimetres from;
    std::optional<Millimetres> below; // not included; none for the largest
    std::string source;
    LocalText note;
};

struct ScoutingAdvice {
    Figure<std::chrono::days> startsAfterPeak;
    Range<BbchStage> stage;
    Figure<SquareMetres> frame;
    Figure<Frames> framesExpected;
    Figure<Frames> framesFewest;
    Figure<Metres> spacing;
    std::vector<Statement> where;
    std::vector<SizeClass> sizeClasses;
    Figure<Millimetres> hatchling;
    Range<Millimetres> fullGrown;
    Figure<Millimetres> smallestToControl;
};

struct Marks {
    std::vector<Statement> moth;
    std::vector<Statement> larva;
};

struct LookAlike {
    std::string id;
    LocalText name;
    std::string latin;
    std::optional<Statement> remark;
    Marks marks;
};

} // namespace duskrow::domain
