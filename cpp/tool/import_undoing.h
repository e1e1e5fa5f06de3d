// SPDX-License-Identifier: MIT
#pragma once

#include "store/import_ledger.h"
#include "tool/import_file.h"

namespace duskrow::tool {

store::ImportBy importBy(const Holding& holding);

// Told on where errors go how far a long work is; false once the person has pressed Ctrl+C.
store::Progress progressShown();

// Takes an import back, named by its id or by the name of its file.
domain::Result<int> undoImport(Holding& holding, const ImportLine& line);

} // namespace duskrow::tool
