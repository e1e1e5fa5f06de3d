// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "domain/protocol/figure.h"
#include "domain/protocol/protocol_units.h"

namespace duskrow::domain {

struct Band {
    std::string id;
    int level = 1; // 1 is the lowest; as many dots
    LocalText name;
    Moths from;
    std::optional<Moths> below; // not included; none for the highest band
    std::string source;
    Statement meaning; // its `id` is empty
};

// Whole-season catch of one trap against bands. They hold for these trap types and for no other.
struct CatchRule {
    std::string id;
    std::vector<std::string> trapTypes;
    std::string edgeSource;
    LocalText edgeNote;
    std::vector<Band> bands; // ascending, contiguous from 0; a catch on an edge belongs to the higher band
    std::vector<Statement> reading;
};

enum class Currency { Canadian, UnitedStates }; // dollars

// When control makes sense, besides the threshold.
struct ControlWindow {
    Range<BbchStage> stage;
    Figure<Percent> largeLarvae; // of the larvae looked at, at or over the smallest size to control
    Figure<Millimetres> beReady; // larvae of this size: count, and be ready
    Figure<Percent> decideBeforePodDamage; // of the pods; where it stands, damage must have been seen as well
    Figure<Percent> gradeLossFromPodDamage;
    Range<std::chrono::days> lookAgain;
};

// Larvae per square metre at which loss equals cost: cost / (loss per larva * price).
struct ThresholdRule {
    std::string id;
    std::vector<std::string> crops;
    Figure<BushelsPerAcrePerLarva> lossPerLarva;
    Figure<Kilograms> bushel;
    Figure<double> drySeasonDivisor;
    Range<DollarsPerBushel> publishedPrice;
    Range<DollarsPerAcre> publishedCost;
    Range<LarvaePerSquareMetre> publishedLarvae;
    Figure<Currency> publishedCurrency;
    Range<std::chrono::year> trialYears; // of the trials that the loss comes from
    Figure<int> trialVarieties;
    Figure<LarvaePerSquareMetre> floor;
    std::vector<Statement> evidence;
    ControlWindow control;
    std::vector<Statement> timing;
};

// A rule of a shape that this program does not know yet.
struct UnknownRule {
    std::string id;
    std::string shape;
};

} // namespace duskrow::domain
