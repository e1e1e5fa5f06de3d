// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "demo/summer.h"
#include "demo/valley.h"

namespace duskrow::demo {

// Things that happen to some traps, each at the visit with that number (from 0).
struct Mishaps {
    std::optional<int> fallenAt;
    std::optional<int> noAccessAt; // could not count, the catch stays in the bucket
    std::optional<int> floodedAt; // could not count, the catch is gone
    std::optional<int> tenfoldAt; // typed with a nought too many
    std::optional<int> correctedAt; // typed wrong and put right the next day
    std::optional<int> unsureAt; // some moths were sent away to be named
    std::optional<int> aliveAt; // moths alive: the killing strip is spent
    std::optional<int> sprayedAt;
    std::optional<int> lureChangedAt;
    std::optional<int> lostAt; // the trap was gone and was not replaced
    bool badLure = false; // was touched
    bool lent = false;
    bool neverRaised = false;
};

// One trap in one season, as it will go.
struct Story {
    std::size_t number = 0; // of the trap
    int year = 0;
    const Keeper* keeper = nullptr;
    domain::Uuid season;
    domain::Uuid district;
    std::string siteName;
    Spot spot;
    domain::LocalDay setDay;
    domain::LocalDay lastCountWeek; // the count day of the last week
    std::optional<domain::LocalDay> notSeenSince; // no visits on this day and later
    double wholeCatch = 0; // expected over the whole flight
    int countLag = 0; // days from the count day on which this keeper usually comes
    double missesWeek = 0.07;
    double bees = 1.2; // expected a week
    Crop crop;
    Mishaps mishaps;
};

struct SeasonFrame {
    std::uint64_t seed = 0;
    int year = 0;
    int yearsAgo = 0; // 0 is the present season
    domain::Uuid season;
    domain::LocalDay today;
};

// The first Sunday of June: traps go up around it and are counted over eight weeks of Sunday to Saturday.
domain::LocalDay seasonStart(int year);

Story storyOf(const Valley& valley, const SeasonFrame& frame, std::size_t trap);

} // namespace duskrow::demo
