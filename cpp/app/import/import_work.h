// SPDX-License-Identifier: MIT
#pragma once

#include <memory>

#include "domain/import/import_plan.h"
#include "formats/import_reading.h"
#include "store/import_undo.h"

namespace duskrow::app {

// A file, and what a person said of it.
struct ImportAsk {
    std::string path;
    formats::ImportChoices choices = {};
    std::vector<domain::ImportTerms> pests = {}; // in use: one of them was counted
    std::string pest = {}; // which, where there are several
    std::optional<bool> emptied = true; // at each count, where a row does not say
    domain::Uuid programme = {};
};

// What was found in it. Without a plan while it can not be read as it stands: `missing` says why, and its
// columns are there to be chosen by hand.
struct ImportSeen {
    store::ImportNoted import = {};
    formats::ImportReading reading = {};
    std::optional<domain::ImportPlan> plan = {};
    std::optional<domain::Error> missing = {};
};

// The bytes of a file that somebody chose, and its name as an import notes it.
//
// Errors  FileUnreadable, FileTooLarge
domain::Result<std::string> importBytes(const std::string& path);
std::string importName(const std::string& path);

// Reads a file and holds it against the store. Takes its time: not for the thread of the screens.
//
// Errors  FileUnreadable, FileTooLarge, those of readCounts that no choice mends, as in queries.h
domain::Result<std::shared_ptr<const ImportSeen>> readImport(store::Reader& reader, const ImportAsk& ask);

} // namespace duskrow::app
