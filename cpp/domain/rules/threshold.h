// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/base/result.h"
#include "domain/protocol/protocol.h"
#include "domain/rules/threshold_working.h"
#include "domain/rules/typed_money.h"

namespace duskrow::domain {

using LarvaePerFrame = Quantity<struct LarvaePerFrameTag, double>;
using KilogramsPerHectare = Quantity<struct KilogramsPerHectareTag, double>;

// Why the number stands on thinner ground than a printed one, or what was done to it.
enum class ThresholdNote {
    PriceBelowPublished,
    PriceAbovePublished,
    CostBelowPublished,
    CostAbovePublished,
    LarvaeBelowPublished, // the threshold itself, as a whole number, is none of those printed
    LarvaeAbovePublished,
    OtherCurrency, // the published amounts are in other dollars, so ranges of money are not compared
    DrySeason, // divided by the user's own divisor
    DivisorNotPublished, // which is not the published one
    AtFloor, // the formula gives the protocol's floor or less: the floor holds
    FrameNotPublished, // the user's own frame
};

// All as typed by a person.
//
// cost, costUnit    as parseControlCost
// price, priceUnit  as parseHarvestPrice
// drySeasonDivisor  blank for a usual season; the protocol's own is only a preset, never applied unasked
// frameM2           area of the user's own frame in square metres; blank for the protocol's
struct ThresholdInput {
    TypedCost cost;
    std::string costUnit;
    std::string price;
    std::string priceUnit;
    std::string drySeasonDivisor = {};
    std::string frameM2 = {};
};

// The threshold with all it was made from. Nothing is rounded on the way.
struct Threshold {
    std::string protocol; // id
    std::string protocolVersion; // the rules that made this number; they change with time
    std::string rule; // id in the protocol
    ControlCost cost; // in the user's units
    HarvestPrice price;
    DollarsPerAcre costPerAcre;
    DollarsPerBushel pricePerBushel;
    BushelsPerAcrePerLarva lossPerLarva;
    Kilograms bushel;
    std::optional<double> drySeasonDivisor;
    LarvaePerSquareMetre usualSeason; // by the formula alone
    LarvaePerSquareMetre larvae; // the threshold: with the divisor, and not below the floor
    SquareMetres frame;
    LarvaePerFrame perFrame; // the same for one frame
    // What one larva on each square metre costs; in a dry season times the divisor, so that threshold times
    // loss is the cost of control again (unless the floor holds).
    DollarsPerAcre moneyPerLarva;
    KilogramsPerHectare yieldPerLarva; // seed lost to one larva on each square metre
    std::vector<ThresholdNote> notes;
    std::vector<WorkingStep> working; // to be shown and checked by hand
};

// The first threshold of a protocol for a crop.
//
// crop    an id of the protocol; empty for its main crop
// Errors  ProtocolNoThreshold {protocol id, crop}
Result<const ThresholdRule*> thresholdRuleFor(const Protocol& protocol, std::string_view crop);

// Larvae per square metre at which the loss equals the cost of control.
//
// Errors  those of parseControlCost and parseHarvestPrice; CurrenciesDiffer; Empty {"frame_m2"} when neither
//         protocol nor user name a frame; OutOfRange for a divisor outside 1 to 5 or a frame outside 0.01 to
//         10 square metres
// Source  cost / (loss for each larva x price): Canola Council of Canada, Canola Watch, 7 February 2013,
// after
//         Bracken and Bucher 1977. It gives all 42 numbers of the table of Alberta Agriculture.
Result<Threshold> thresholdOf(
    const Protocol& protocol, const ThresholdRule& rule, const ThresholdInput& input);

// The formula alone, with the floor.
//
// divisor  1 for a usual season
LarvaePerSquareMetre thresholdAt(
    const ThresholdRule& rule, DollarsPerAcre cost, DollarsPerBushel price, double divisor);

// Whether a cost and a price lie within the printed table. In hectares and tonnes its own headings are
// rounded to whole dollars, so the ends are too.
struct Published {
    int cost = 0; // -1 below, 1 above the printed costs, 0 within
    int price = 0;
};
Published comparedToPublished(const ThresholdRule& rule, DollarsPerAcre cost, LandUnit land,
    DollarsPerBushel price, HarvestUnit harvest);

} // namespace duskrow::domain
