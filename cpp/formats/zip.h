// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>

#include "domain/base/time.h"
#include "formats/formats.h"

namespace duskrow::formats {

// The files as one zip archive, deflated. The same input gives the same bytes.
//
// at      the time that all files get
// Errors  NotEnoughMemory
domain::Result<std::string> writeZip(std::span<const ExportedFile> files, domain::Instant at);

} // namespace duskrow::formats
