// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <map>
#include <string>

#include "domain/protocol/protocol.h"
#include "domain/records/trap.h"
#include "text/animal.h"

namespace duskrow::app {

class Session;

// What a trap is called: "bertha 4", "trap without a tag".
QString tagWords(const domain::Trap& trap);

// "Slough corner · bertha 4"
QString trapTitle(const domain::Site& site, const domain::Trap& trap);

// Which picture stands for a type of trap: "bucket", "delta", "wing", "cone" or "jug"; "bucket" where the
// protocol does not know it.
QString trapShape(const domain::Protocol* protocol, std::string_view trapType);

// What is counted in the traps of a pest, in the language of the device.
text::Animal animalOf(const domain::Protocol* protocol);
text::Animal animalOf(Session& session, const std::string& pest);

// The same of every pest in use, to be handed to another thread.
using Animals = std::map<std::string, text::Animal>;
Animals animalsOf(Session& session);

} // namespace duskrow::app
