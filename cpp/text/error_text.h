// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "domain/base/result.h"

namespace duskrow::text {

// What a person reads when something went wrong: what happened, then the way out. Whole sentences,
// translated. Long or many-lined values are shortened; values in a script of the other direction are kept
// apart.
QString sentence(const domain::Error& error);

} // namespace duskrow::text
