// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "domain/protocol/protocol.h"
#include "domain/rules/region_result.h"
#include "domain/rules/region_years.h"
#include "store/season_bulletin.h"
#include "store/season_records.h"

namespace duskrow::store {

// Every season up to a day, the latest first, each as on the same day of its year; those without a trap of
// the kind are passed over. Bands are of whole seasons; of the year of `today` they are of the catch so far
// where no season is whole. Grows with the store: not for the thread of the screens.
//
// goesOn  asked with each year before it is read; false stops, with what was read by then
// Errors  as in queries.h
domain::Result<std::vector<domain::RegionYear>> regionYears(Reader& reader, const domain::Protocol& protocol,
    const TrapKind& kind, domain::LocalDay today, const std::function<bool(int)>& goesOn);

// One season of one kind of traps, by districts and weeks. It looks on its own records: it is moved, never
// copied.
struct RegionOfSeason {
    RegionOfSeason() = default;
    RegionOfSeason(const RegionOfSeason&) = delete;
    RegionOfSeason& operator=(const RegionOfSeason&) = delete;
    RegionOfSeason(RegionOfSeason&&) = default;
    RegionOfSeason& operator=(RegionOfSeason&&) = default;
    ~RegionOfSeason() = default;

    SeasonRecords records;
    std::vector<domain::TrapSeason> seasons;
    domain::RegionResult result;
};

domain::Result<RegionOfSeason> regionOfSeason(Reader& reader, const domain::Season& season,
    const domain::Protocol& protocol, const TrapKind& kind, domain::LocalDay today);

} // namespace duskrow::store
