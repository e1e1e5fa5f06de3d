// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/rules/trap_facts.h"
#include "store/queries.h"

namespace duskrow::store {

enum class VisitsFor { Catch, Due, Checks, Nothing }; // which of their fields are read

// The records of one season, each trap with its own.
struct SeasonRecords {
    domain::Season season;
    std::vector<domain::Trap> traps;
    std::vector<domain::Site> sites; // by id
    std::vector<domain::Visit> visits; // these by trap, in the order of days
    std::vector<domain::Service> services;
    std::vector<domain::Sample> samples;
    std::vector<domain::Uuid> leftOut; // visits whose count is left out of the picture, by id

    // Looks on: the records must outlive it.
    [[nodiscard]] domain::TrapFacts facts(const domain::Trap& trap) const;
    [[nodiscard]] const domain::Site* siteOf(const domain::Trap& trap) const; // null when it is not there
};

// With VisitsFor::Nothing, traps and sites alone: for their names.
//
// Errors  as in queries.h
domain::Result<SeasonRecords> seasonRecords(Reader& reader, const domain::Season& season, VisitsFor wanted);

} // namespace duskrow::store
