// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "domain/protocol/protocol.h"

namespace duskrow::domain {

// What one trap uses up in a season, by its protocol.
struct SupplyRules {
    std::optional<int> luresAtOnce;
    std::optional<std::chrono::days> lureLife;
    std::optional<std::chrono::days> stripLife; // nothing where there is no strip, or nobody has said
    bool hasStrip = false;
    std::optional<std::chrono::days> season;
};

// Of a range of lives the longer end holds, as where it is said what is due.
//
// trapType  as dueRulesOf
SupplyRules supplyRulesOf(const Protocol& protocol, std::string_view trapType);

// How often a thing is put in during a season, the first time among it: 56 days with lures of 42 days are 2.
//
// Both must be known and above 0, else nothing.
std::optional<int> timesPutIn(std::optional<std::chrono::days> life, std::optional<std::chrono::days> season);

// For a number of traps. Nothing where the protocol does not say enough.
struct Supplies {
    std::optional<std::int64_t> lures;
    std::optional<std::int64_t> strips;
};
Supplies suppliesFor(std::int64_t traps, const SupplyRules& rules);

} // namespace duskrow::domain
