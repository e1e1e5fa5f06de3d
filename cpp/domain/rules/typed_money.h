// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "domain/base/result.h"
#include "domain/protocol/pest_rules.h"

namespace duskrow::domain {

using DollarsPerHectare = Quantity<struct DollarsPerHectareTag, double>;

inline constexpr double hectaresPerAcre = 0.40468564224; // exact: the acre of 43,560 square feet

enum class LandUnit { Acre, Hectare };
enum class HarvestUnit { Bushel, Tonne };

// What money for control is counted in: "CAD/ac", "CAD/ha", "USD/ac", "USD/ha".
struct CostUnit {
    Currency currency = Currency::Canadian;
    LandUnit per = LandUnit::Acre;
    bool operator==(const CostUnit&) const = default;
};

// What the harvest is sold in: "CAD/bu", "CAD/t", "USD/bu", "USD/t".
struct PriceUnit {
    Currency currency = Currency::Canadian;
    HarvestUnit per = HarvestUnit::Bushel;
    bool operator==(const PriceUnit&) const = default;
};

// Large and small letters alike. A bare "$" does not say which dollar and is refused.
//
// Errors  UnknownCode {"cost_unit" or "price_unit", what was typed, those there are}
Result<CostUnit> parseCostUnit(std::string_view typed);
Result<PriceUnit> parsePriceUnit(std::string_view typed);
std::string codeOf(CostUnit unit);
std::string codeOf(PriceUnit unit);
std::string codeOf(Currency currency);

// A number of digits with one point or comma at most, blanks around it aside. "1,250" is refused: in one
// language it is twelve hundred and fifty, in another one and a quarter.
//
// field   for the sentence
// Errors  Empty, TooLong, NotANumber; OutOfRange {field, lowest, highest}, negative numbers included
Result<double> parseDecimal(std::string_view typed, std::string_view field, double lowest, double highest);

// What control costs: one sum, or one or more of its parts. Blank is not said. All in the same unit.
struct TypedCost {
    std::string sum = {};
    std::string product = {};
    std::string application = {};
    std::string wheelTracks = {}; // the crop trodden down, as money
};

struct ControlCost {
    double amount = 0.0; // in `unit`, unrounded
    std::vector<double> parts = {}; // as typed, in the order above
    CostUnit unit = {};

    [[nodiscard]] DollarsPerAcre perAcre() const;
};

// Errors  Empty {"cost"}; CostTwice when both the sum and a part are said; those of the two parsers. A part
// may
//         be 0, the whole may not: it lies between 0.1 and 1,000 dollars an acre.
Result<ControlCost> parseControlCost(const TypedCost& typed, std::string_view unit);

struct HarvestPrice {
    double amount = 0.0; // in `unit`, unrounded
    PriceUnit unit = {};

    [[nodiscard]] DollarsPerBushel perBushel(Kilograms bushel) const;
};

// Errors  those of the two parsers. It lies between 1 and 200 dollars a bushel, or 40 and 10,000 a tonne, so
//         that a price typed in the other unit is found.
Result<HarvestPrice> parseHarvestPrice(std::string_view typed, std::string_view unit);

// Whether an amount lies within the bounds that the parsers keep.
bool isSensible(const ControlCost& cost);
bool isSensible(const HarvestPrice& price);

// The same amount in the unit it was typed in.
double inUnit(DollarsPerAcre cost, LandUnit unit);
double inUnit(DollarsPerBushel price, HarvestUnit unit, Kilograms bushel);
DollarsPerHectare toDollarsPerHectare(DollarsPerAcre cost);

} // namespace duskrow::domain
