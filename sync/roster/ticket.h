// SPDX-License-Identifier: MIT
#pragma once

#include "domain/base/signing.h"

namespace duskrow::sync {

// What somebody with a code found out about the programme that it opens.
struct Ticket {
    domain::Uuid programme;
    domain::StreamId founder{};
    domain::Uuid invitation;
    std::string programmeName; // may be empty
};

} // namespace duskrow::sync
