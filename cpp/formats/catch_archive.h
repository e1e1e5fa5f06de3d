// SPDX-License-Identifier: MIT
#pragma once

#include "formats/formats.h"

namespace duskrow::formats {

// Every counted stretch of every trap as an event of a Darwin Core archive, with what it caught; an absence
// where it caught nothing. Stretches that nobody counted are no events. Places are as exact as the records:
// it is the desk's own; what is published comes with a bulletin (bulletin/darwin_core.h).
//
// Errors  those of writing tables and archives
domain::Result<std::vector<ExportedFile>> exportDarwinCore(const ExportInput& input);

} // namespace duskrow::formats
