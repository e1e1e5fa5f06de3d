// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QStringList>

#include "domain/base/result.h"
#include "domain/protocol/protocol.h"

namespace duskrow::protocols {

// The pests whose protocols the programs carry, by id, in alphabetical order.
QStringList carriedProtocols();

// Reads a protocol: from `folder` when one is given and has it, else the one carried inside.
//
// Errors  ProtocolMissing {pest}, FileUnreadable {path}, ProtocolSyntax and ProtocolRule {file, line, what}
domain::Result<domain::Protocol> loadProtocol(const QString& pest, const QString& folder = {});

} // namespace duskrow::protocols
