// SPDX-License-Identifier: MIT
#pragma once

#include "store/store_scene.h"

namespace duskrow::tests {

inline constexpr int seasons = 4;
inline constexpr int trapsASeason = 5000;
inline constexpr int visitsATrap = 8;

inline domain::Uuid seasonAt(int season)
{
    return idOf(static_cast<std::uint32_t>(1'000'000 + season));
}
inline domain::Uuid siteAt(int season, int trap)
{
    return idOf(static_cast<std::uint32_t>(2'000'000 + season * trapsASeason + trap));
}
inline domain::Uuid trapAt(int season, int trap)
{
    return idOf(static_cast<std::uint32_t>(3'000'000 + season * trapsASeason + trap));
}

// Fills a new store with seasons (four, or as many as asked for) of 5,000 traps, each visited eight times and
// with one change of lure, every fourth trap with a sample: 240,000 changes and more. The same numbers every
// time.
void fillBigStore(store::Store& store, int years = seasons);

// A visit as a grower keeps it: all that one stop asks for.
domain::Visit fullVisit(std::uint32_t number, const domain::Uuid& trap, domain::LocalDay day);

} // namespace duskrow::tests
