// SPDX-License-Identifier: MIT
#pragma once

#include "domain/records/programme.h"
#include "store/store.h"

namespace duskrow::demo {

inline constexpr std::int64_t mostTraps = 20'000;
inline constexpr std::int64_t mostSeasons = 50;
inline constexpr std::int64_t largestSeed = 2'147'483'647;

// What the invented district is to be like. The same parameters give the same district.
struct Parameters {
    std::int64_t traps = 40; // a season, 1 to mostTraps
    std::int64_t seasons = 4; // the present one among them, 1 to mostSeasons
    std::int64_t seed = 1; // 0 to largestSeed
    domain::LocalDay today = domain::dayOf(2026, 7, 14); // nothing is entered after it
    std::string pest = "bertha-armyworm"; // protocol id
    std::string protocolVersion = "2026-1";
    std::string trapType = "green-bucket"; // id in the protocol
};

// Errors  OutOfRange {traps, seasons, year or seed, lowest, highest}
domain::Result<domain::Done> checkParameters(const Parameters& wanted);

// Who is who in the district, so that a program can be shown through the eyes of one of them.
struct District {
    domain::Uuid programme;
    domain::Member grower; // keeps three traps near one another
    domain::Member agronomist; // looks after ten
    domain::Member coordinator;
    std::int64_t traps = 0; // of all seasons
    std::int64_t visits = 0;
};

// Fills an empty store with the invented district. The device's member ("me") becomes the grower.
//
// Errors  those of checkParameters; StoreExists when the store holds a programme already;
// those
//         of keeping
domain::Result<District> fillStore(store::Store& store, const Parameters& wanted);

} // namespace duskrow::demo
