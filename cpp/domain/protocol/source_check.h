// SPDX-License-Identifier: MIT
#pragma once

#include "domain/protocol/reading.h"

namespace duskrow::domain {

// Refuses a number, or a "value", "from" or "to", that stands in a group without a known source, and an
// unknown value that does not say so in a note. Holds at any depth below `section`.
void checkSources(Reading& reading, const LocatedJson& section, const LocatedJson& sources);

} // namespace duskrow::domain
