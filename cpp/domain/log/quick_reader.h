// SPDX-License-Identifier: MIT
#pragma once

#include "domain/log/change.h"

namespace duskrow::domain {

// Reads a change in the form that almost all have: keys in order, values that are empty, flags, whole numbers
// or texts, nothing unknown. Nothing for whatever is different in any way, right or wrong: the careful reader
// then decides.
std::optional<Change> readUsualChange(std::string_view bytes);

} // namespace duskrow::domain
