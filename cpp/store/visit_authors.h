// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "store/reader.h"

namespace duskrow::store {

// Who wrote each visit of a season down at first, by visit; visits whose trap is not here are left out. Reads
// the log: not for the thread of the screens.
//
// Errors  as in queries.h
domain::Result<std::map<domain::Uuid, domain::Uuid>> visitAuthors(Reader& reader, const domain::Uuid& season);

} // namespace duskrow::store
