// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <map>
#include <optional>

#include "store/season_records.h"

namespace duskrow::tool {

// The records of one season with the names of people and districts; traps by district, site and tag.
struct SeasonRecords : store::SeasonRecords {
    std::map<domain::Uuid, QString> names; // of districts and members

    [[nodiscard]] QString title(const domain::Trap& trap) const; // "Slough corner · bertha 4"
    [[nodiscard]] QString districtOf(const domain::Trap& trap) const;
    [[nodiscard]] QString keeperOf(const domain::Trap& trap) const;
};

// The season of a year, or the last one that has begun by `today`.
//
// Errors  NameMissing {"season", year} when the store has none
domain::Result<domain::Season> seasonWanted(
    store::Reader& reader, std::optional<int> year, domain::LocalDay today);

domain::Result<SeasonRecords> namedRecords(
    store::Reader& reader, const domain::Season& season, store::VisitsFor wanted);

// A trap by its site, its tag, both, or its id; large and small letters alike.
//
// Errors  NameMissing, NameAmbiguous {"trap", name}
domain::Result<domain::Trap> trapNamed(const SeasonRecords& records, const std::string& name);

} // namespace duskrow::tool
