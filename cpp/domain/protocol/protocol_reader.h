// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "domain/base/result.h"
#include "domain/protocol/protocol.h"

namespace duskrow::domain {

// Reads and checks a protocol file. Top-level sections that this program does not know are passed over, so
// that a file for a newer program of the same form still serves.
//
// text      UTF-8 JSON as described by assets/protocols/protocol.schema.json, at most 1 MiB
// fileName  for the errors only
// Errors    ProtocolSyntax {file, line, what} when it is not JSON or ends early;
//           ProtocolRule {file, line, what} when it is JSON but not a sound protocol; `detail` names the
//           field
Result<Protocol> readProtocol(std::string_view text, const std::string& fileName);

} // namespace duskrow::domain
