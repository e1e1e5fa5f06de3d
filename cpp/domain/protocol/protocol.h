// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "domain/protocol/field_rules.h"
#include "domain/protocol/figure.h"
#include "domain/protocol/heat.h"
#include "domain/protocol/pest_rules.h"
#include "domain/protocol/scouting.h"
#include "domain/protocol/trap_rules.h"
#include "domain/protocol/trapping.h"

namespace duskrow::domain {

enum class CautionPlace { Counting, Decision, KillingStrip, Round };

struct Caution {
    Statement statement;
    std::vector<CautionPlace> shown;
};

struct CitedSource {
    std::string id;
    std::string citation;
};

// What is known of one pest and the work of trapping it, as read from its file. A section that the file
// leaves out is absent here: another pest may have no killing strip, no threshold or no degree-days.
struct Protocol {
    std::string id;
    std::string version; // "2026-1"; every result keeps the version that made it
    LocalText name;
    std::string latin;
    std::optional<CountedWord> counted; // what its traps catch, where that is not moths
    std::vector<ProtocolCrop> crops; // at least one, the main one first
    std::optional<Statement> otherHosts;
    std::vector<TrapType> trapTypes; // at least one, the usual one first
    Figure<int> trapsPerField;
    std::optional<LureAdvice> lure;
    std::optional<StripAdvice> killingStrip;
    std::optional<HeightAdvice> height;
    std::vector<PlacementAdvice> placement;
    SeasonPlan season;
    std::optional<Phenology> phenology;
    std::optional<HeatModel> heat;
    std::optional<FlightModel> flightModel;
    std::vector<CropDays> cropCalendar; // in the order of growth
    std::vector<CatchRule> catchRules;
    std::optional<LocalText> noBands; // why there are no bands of a whole season, where the file says it
    std::vector<ThresholdRule> thresholdRules;
    std::vector<TrapRule> trapRules;
    std::vector<FieldRule> fieldRules;
    std::vector<UnknownRule> unknownRules;
    std::optional<ScoutingAdvice> scouting;
    Marks marks;
    std::vector<LookAlike> lookAlikes;
    std::vector<Caution> cautions; // in the order of the file
    std::vector<CitedSource> sources;

    [[nodiscard]] const TrapType* trapType(std::string_view trapTypeId) const;

    // The full citation, or null for a reserved id.
    [[nodiscard]] const std::string* citation(std::string_view sourceId) const;

    [[nodiscard]] std::vector<Statement> cautionsAt(CautionPlace place) const;
};

} // namespace duskrow::domain
