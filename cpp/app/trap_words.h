// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "domain/protocol/protocol.h"
#include "domain/records/trap.h"

namespace duskrow::app {

// What a trap is called: "bertha 4", "trap without a tag".
QString tagWords(const domain::Trap& trap);

// "Slough corner · bertha 4"
QString trapTitle(const domain::Site& site, const domain::Trap& trap);

// Which picture stands for a type of trap: "bucket", "delta", "wing", "cone" or "jug"; "bucket" where the
// protocol does not know it.
QString trapShape(const domain::Protocol* protocol, std::string_view trapType);

} // namespace duskrow::app
