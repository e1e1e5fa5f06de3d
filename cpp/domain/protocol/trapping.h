// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "domain/base/height_rule.h"
#include "domain/protocol/figure.h"
#include "domain/protocol/protocol_units.h"
#include "domain/records/trap.h"

namespace duskrow::domain {

enum class TrapShape { Bucket, Delta, Wing, Cone, Jug };
enum class CatchOf { Males, Females, Both };
enum class PlacementRelation { About, AtLeast, AwayFrom };

struct StageHeight {
    std::string id;
    LocalText name;
    Range<Millimetres> height;
};

// A stage of the crop that a person can tell by eye.
struct GrowthStage {
    std::string id;
    BbchStage code;
    LocalText name;
    std::string source;
};

struct ProtocolCrop {
    std::string id;
    LocalText name;
    std::vector<StageHeight> canopyHeights; // in the order of growth; may be empty
    LocalText growthScale = {}; // which scale the codes are of
    std::vector<GrowthStage> growthStages = {}; // in the order of growth; may be empty
};

struct TrapType {
    std::string id;
    LocalText name;
    TrapShape shape = TrapShape::Bucket;
    bool hasKillingStrip = false;
    bool hasStickyLiner = false;
    std::optional<Statement> remark;
};

struct ShelfLife {
    DegreesCelsius atMost;
    std::chrono::months keeps{0};
    std::string source;
    LocalText note;
};

struct LureAdvice {
    Figure<CatchOf> catches;
    Figure<int> perTrap;
    Range<std::chrono::days> life;
    std::vector<Statement> handling; // in the order in which they matter at set-up
    std::vector<Statement> storage;
    std::vector<ShelfLife> shelfLife;
};

struct StripAdvice {
    Range<std::chrono::days> life;
    std::vector<Statement> handling;
};

struct HeightAdvice {
    Figure<HeightRule> rule;
    Figure<Millimetres> entrance; // above the ground
    Range<Millimetres> stake;
    Figure<Millimetres> leastClearance; // entrance above the canopy top
};

struct PlacementAdvice {
    std::string id;
    PlacementRelation relation = PlacementRelation::About;
    Figure<Metres> distance;
    LocalText text;
};

struct SeasonPlan {
    Figure<std::chrono::month_day> startsOnOrAfter; // then the first day that is `weekStarts`
    Figure<std::chrono::weekday> weekStarts;
    Figure<std::chrono::weeks> weeks;
    Range<std::chrono::month_day> setUp;
    Range<std::chrono::month_day> firstCount;
    Range<std::chrono::month_day> takeDown;
    Figure<std::chrono::month_day> tooLateFrom; // for setting up
    Range<std::chrono::days> firstMothsAfter; // set-up
    Figure<std::chrono::days> visitInterval;
    Range<std::chrono::month_day> usualPeak;
};

struct Phenology {
    Figure<Percent> setUpAtPupalDevelopment;
    Range<std::chrono::days> adultsAfter; // that development
    Range<std::chrono::days> eggsHatchAfter; // laying
    Range<std::chrono::days> damagingLarvaeAfter; // laying
};

} // namespace duskrow::domain
