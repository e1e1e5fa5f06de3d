// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "formats/csv.h"
#include "store/reader.h"

namespace duskrow::tool {

// Every kind of record as a table: "traps", "protocol-uses" ... The columns are the fields as they are
// declared, so a name ends in its unit where it has one; withdrawn records are among the rows and say why.
domain::Result<std::vector<formats::Table>> recordTables(store::Reader& reader);

} // namespace duskrow::tool
