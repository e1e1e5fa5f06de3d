// SPDX-License-Identifier: MIT
#pragma once

#include "formats/bulletin/document.h"
#include "formats/csv.h"

namespace duskrow::formats {

// One line for the region, each district and each published cell, with the names of columns that programs
// read. Nothing stands where nothing may be said.
Table areaTable(const BulletinDocument& document);

} // namespace duskrow::formats
