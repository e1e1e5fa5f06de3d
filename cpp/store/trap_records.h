// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "domain/protocol/protocol.h"
#include "domain/rules/season_outlook.h"
#include "domain/rules/trap_facts.h"
#include "store/queries.h"

namespace duskrow::store {

// All that is kept of one trap.
struct TrapRecords {
    domain::Trap trap;
    domain::Site site; // empty when it is not known
    domain::Season season; // empty when it is not known
    std::vector<domain::Visit> visits; // withdrawn ones among them
    std::vector<domain::Service> services;
    std::vector<domain::Sample> samples;
    std::vector<domain::Loan> loans;
    std::vector<domain::Uuid> leftOut; // visits whose count is left out of the picture, by id

    // Looks on: the records must outlive it.
    [[nodiscard]] domain::TrapFacts facts() const { return {trap, visits, services, samples, leftOut}; }
};

// Nothing when there is no such trap. Errors as in queries.h.
domain::Result<std::optional<TrapRecords>> trapRecords(Reader& reader, const domain::Uuid& trap);

// Every trap season of former years that one may learn from: same pest, same trap type. Grows with the store:
// not for the thread of the screens.
//
// year  of the season asked about; seasons of this year and later are passed over
domain::Result<std::vector<domain::PastTrapSeason>> pastTrapSeasons(Reader& reader,
    const domain::Protocol& protocol, const std::string& trapType, int year, domain::LocalDay today);

} // namespace duskrow::store
