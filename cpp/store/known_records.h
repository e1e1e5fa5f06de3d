// SPDX-License-Identifier: MIT
#pragma once

#include <set>

#include "domain/import/import_plan.h"
#include "store/reader.h"

namespace duskrow::store {

// What the store holds of the seasons of these years: what a table of counts is held against.
//
// Errors  as in queries.h
domain::Result<domain::KnownRecords> knownRecords(Reader& reader, const std::set<int>& years);

} // namespace duskrow::store
