// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string_view>

#include "domain/base/result.h"
#include "domain/base/units.h"
#include "domain/protocol/protocol.h"

namespace duskrow::domain {

// The whole-season bands of a protocol for one trap type, ascending and contiguous from 0. Bands belong to
// the trap type: another type catches differently and never borrows them. They live as long as `protocol`.
//
// Errors  UnknownCode {"trap type", id} when the protocol does not know the type;
//         ProtocolNoBands {protocol id, trap type id} when nobody has published bands for it
Result<std::span<const Band>> bandsFor(const Protocol& protocol, std::string_view trapType);

// The band of a whole-season catch of one trap. Exactly on an edge belongs to the higher band, as each
// protocol file says under "on_an_edge".
//
// bands  as bandsFor gives them; at least one
// catchOfSeason  0 or more
const Band& bandOf(std::span<const Band> bands, Moths catchOfSeason);

} // namespace duskrow::domain
