// SPDX-License-Identifier: MIT
#pragma once

#include "formats/bulletin/document.h"

namespace duskrow::formats {

// The files of a Darwin Core archive: event.csv (one event for each published district and cell of the week),
// occurrence.csv (what was caught there, or that nothing was), meta.xml and eml.xml.
//
// An area of which nothing is published is no event. Where every trap counted in full caught nothing, the
// occurrence says so; no event at all means that nobody may say.
//
// Source  TDWG Darwin Core terms; Darwin Core text guide, from memory; Ecological Metadata Language 2.1.1,
//         from memory
domain::Result<std::vector<ExportedFile>> darwinCoreFiles(const BulletinDocument& document);

// The same as one zip archive.
domain::Result<std::string> darwinCoreArchive(const BulletinDocument& document);

} // namespace duskrow::formats
