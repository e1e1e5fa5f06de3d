// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "demo/dice.h"
#include "domain/records/programme.h"

namespace duskrow::demo {

// Where something lies, in kilometres from the middle of the valley.
struct Spot {
    double eastKm = 0;
    double northKm = 0;
};

domain::GeoPoint placeOf(Spot spot);

struct Keeper {
    domain::Member member;
    Spot home;
    bool inOutbreak = false; // lives where the moths broke out
    bool typesOwnCounts = false; // has the app; the others' counts are typed in by the coordinator
};

// The people of the valley and how far it reaches: the same ones every season.
struct Valley {
    std::vector<Keeper> keepers; // the grower, the agronomist, the coordinator, then the other growers
    std::vector<std::size_t> keeperOfTrap; // for each trap
    std::vector<domain::District> districts;
    double halfWidthKm = 30;
    double halfHeightKm = 22;

    static constexpr std::size_t grower = 0;
    static constexpr std::size_t agronomist = 1;
    static constexpr std::size_t coordinator = 2;
    static constexpr std::size_t growersTraps = 3;
    static constexpr std::size_t agronomistsTraps = 10;

    [[nodiscard]] const domain::District& districtAt(Spot spot) const;
};

// firstDay  on which the ids of people and districts are said to have been made
Valley makeValley(std::uint64_t seed, std::size_t traps, domain::Instant firstDay);

} // namespace duskrow::demo
