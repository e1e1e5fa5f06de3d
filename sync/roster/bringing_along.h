// SPDX-License-Identifier: MIT
#pragma once

#include <set>

#include "store/store.h"

// What somebody kept alone comes along into a programme that he joins.
namespace duskrow::sync {

struct Brought {
    std::int64_t records = 0;
    std::int64_t alreadyThere = 0; // of the same id; left as they are
    std::int64_t photos = 0;
    std::int64_t photosMissing = 0; // named by a record, but not beside the old store
    std::set<int> yearsNotHere; // seasons that the programme has not begun: their records lie ready for them
    std::set<std::string> pestsNotHere; // trapped or scouted, and not in use here in that season
    std::set<std::string> districtsNotHere; // their names; kept aside until a coordinator lets them in
    std::int64_t otherKeepers = 0; // sites that another member kept before; they are the new member's now
};

// Writes the records of a programme that one kept alone into another that one has joined: as they stand, with
// the same ids and under the member's own name, withdrawn ones as withdrawn, in one transaction; photographs
// too. Seasons and districts become the programme's own: seasons by their year, districts by their name. Who
// observed and who borrowed stays by name. The old file stays as it is, and keeps the history.
//
// member  who joined
// Errors  those of reading, of photographs and of keeping; nothing but photographs was written then
domain::Result<Brought> bringAlong(
    store::Reader& solo, store::Store& joined, const domain::Uuid& member, const domain::Moment& now);

} // namespace duskrow::sync
