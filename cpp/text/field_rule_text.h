// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <string>

#include "domain/protocol/protocol.h"

namespace duskrow::text {

// A rule for what is found in the crop, as whoever stands at its edge reads it: where it was published, what
// is held against what, how to look, and the source.
//
// language  of the texts in the protocol: "en", "fr"
QString fieldRuleLine(
    const domain::Protocol& protocol, const domain::FieldRule& rule, const std::string& language);

} // namespace duskrow::text
