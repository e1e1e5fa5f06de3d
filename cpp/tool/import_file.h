// SPDX-License-Identifier: MIT
#pragma once

#include "domain/import/import_plan.h"
#include "formats/import_reading.h"
#include "store/import_ledger.h"
#include "tool/holding.h"

namespace duskrow::tool {

// What a person typed about an import.
struct ImportLine {
    std::string store;
    std::string file;
    std::string keys;
    std::string protocols;
    std::string encoding;
    std::string delimiter;
    std::string dayOrder;
    std::string decimalMark;
    std::string year;
    std::string pest;
    std::string trapType;
    std::string emptied;
    std::vector<std::string> columns;
    std::string undo;
    bool list = false;
    bool dryRun = false;
    bool asJson = false;
};

// A table that was read and held against the store, before anything is made.
struct ImportPreview {
    store::ImportNoted import;
    formats::ImportReading reading; // its rows and words went on into the plan
    domain::ImportTerms terms;
    domain::ImportPlan plan;
};

// Errors  FileUnreadable, FileTooLarge; those of readCounts; UnknownCode where a choice is none; Empty
//         {pest_in_use} when the store has none or several in use and none was named; those of protocolOf
domain::Result<ImportPreview> previewOf(Holding& holding, const ImportLine& line);

} // namespace duskrow::tool
