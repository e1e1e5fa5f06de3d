// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "domain/base/result.h"
#include "formats/csv.h"
#include "formats/trap_records.h"

namespace duskrow::formats {

struct ExportInput {
    std::vector<Table> tables;
    std::vector<ExportedTrap> traps = {};
    std::string programme = {};
    std::string programmeKey = {}; // as in BulletinDocument
    domain::Instant made = {};
};

struct ExportedFile {
    std::string name; // with its extension
    std::string bytes;
};

// titleCode  names the sentence that menus show for it; the words are in text/
struct Format {
    std::string_view id;
    std::string_view extension;
    std::string_view mime;
    std::string_view titleCode;
    domain::Result<std::vector<ExportedFile>> (*write)(const ExportInput&);
};

// Every format that can be exported; menus, command line and documentation read this table.
std::span<const Format> formats();

// Errors  FormatUnknown {id, known ids}
domain::Result<Format> formatOf(std::string_view id);

} // namespace duskrow::formats
