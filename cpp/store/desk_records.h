// SPDX-License-Identifier: MIT
#pragma once

#include <set>

#include "domain/rules/week_desk.h"
#include "store/queries.h"

namespace duskrow::store {

// What a coordinator's desk goes over, of one season: read once, asked for every week.
struct DeskRecords {
    std::vector<domain::Trap> traps; // by id, with only the fields that a desk names them by
    std::vector<domain::Site> sites; // by id, likewise
    std::vector<domain::Member> members;
    std::vector<domain::District> districts;
    std::vector<domain::Loan> loans; // by trap
    std::vector<domain::TrapOfDesk> trapsOfDesk; // beside the traps
    std::vector<domain::VisitOfDesk> visits; // by trap and day
    std::set<domain::Uuid> cameIn; // records that other devices brought or changed since the mark
    std::int64_t mark = 0; // how far what came in goes now

    [[nodiscard]] const domain::Site* siteOf(const domain::Trap& trap) const; // null when it is not there
};

// since  a mark of an earlier reading; nothing: nothing counts as come in
// own    this device's stream: what is typed here did not come in
// Errors  as in queries.h
domain::Result<DeskRecords> deskRecords(Reader& reader, const domain::Uuid& season,
    std::optional<std::int64_t> since, const domain::StreamId& own);

} // namespace duskrow::store
