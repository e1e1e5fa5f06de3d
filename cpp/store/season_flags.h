// SPDX-License-Identifier: MIT
#pragma once

#include "domain/rules/flag.h"
#include "store/queries.h"

namespace duskrow::store {

// What a desk is asked to look at in one season, the latest day first: seasonFlags over the records that are
// here, without those of visits that a coordinator settled. Reads the log for who wrote each visit: not for
// the thread of the screens.
//
// Errors  as in queries.h
domain::Result<std::vector<domain::Flag>> flagsOfSeason(
    Reader& reader, const domain::Season& season, domain::LocalDay today);

} // namespace duskrow::store
