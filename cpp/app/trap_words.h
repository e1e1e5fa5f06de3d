// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "domain/records/trap.h"

namespace duskrow::app {

// What a trap is called: "bertha 4", "trap without a tag".
QString tagWords(const domain::Trap& trap);

// "Slough corner · bertha 4"
QString trapTitle(const domain::Site& site, const domain::Trap& trap);

} // namespace duskrow::app
