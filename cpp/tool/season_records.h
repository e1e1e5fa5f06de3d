// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <map>
#include <optional>
#include <vector>

#include "domain/rules/trap_facts.h"
#include "store/queries.h"

namespace duskrow::tool {

// The records of one season, each trap with its own.
struct SeasonRecords {
    domain::Season season;
    std::vector<domain::Trap> traps; // by district, site and tag
    std::map<domain::Uuid, domain::Site> sites;
    std::map<domain::Uuid, QString> names; // of districts and members
    std::map<domain::Uuid, std::vector<domain::Visit>> visits; // by trap, in the order of days
    std::map<domain::Uuid, std::vector<domain::Service>> services;
    std::map<domain::Uuid, std::vector<domain::Sample>> samples;
    std::vector<domain::Uuid> leftOut; // visits whose count is left out of the picture, by id

    // Looks on: the records must outlive it.
    [[nodiscard]] domain::TrapFacts facts(const domain::Trap& trap) const;

    [[nodiscard]] const domain::Site* siteOf(const domain::Trap& trap) const;
    [[nodiscard]] QString title(const domain::Trap& trap) const; // "Slough corner · bertha 4"
    [[nodiscard]] QString districtOf(const domain::Trap& trap) const;
    [[nodiscard]] QString keeperOf(const domain::Trap& trap) const;
};

// The season of a year, or the last one that has begun by `today`.
//
// Errors  NameMissing {"season", year} when the store has none
domain::Result<domain::Season> seasonWanted(
    store::Reader& reader, std::optional<int> year, domain::LocalDay today);

enum class Visits { ForCatch, ForDue, None }; // which of their fields are read

// With Visits::None, without the records of single traps: for their names.
domain::Result<SeasonRecords> seasonRecords(
    store::Reader& reader, const domain::Season& season, Visits wanted);

// A trap by its site, its tag, both, or its id; large and small letters alike.
//
// Errors  NameMissing, NameAmbiguous {"trap", name}
domain::Result<domain::Trap> trapNamed(const SeasonRecords& records, const std::string& name);

} // namespace duskrow::tool
