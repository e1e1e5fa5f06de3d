// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "store/reader.h"

namespace duskrow::store {

// When the last entry of each device that is here was made, by its author's clock. Without what this device
// wrote and has not handed over yet.
domain::Result<std::map<domain::StreamId, domain::Instant>> lastHeard(Reader& reader);

} // namespace duskrow::store
