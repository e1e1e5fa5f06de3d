// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/base/signing.h"

namespace duskrow::sync {

// What somebody with a code found out about the programme that it opens.
struct Ticket {
    domain::Uuid programme;
    domain::StreamId founder{};
    domain::Uuid invitation;
    domain::Uuid member; // who is invited
    std::optional<domain::LocalDay> until; // last day on which it may be claimed, when that is known
    std::string programmeName; // may be empty
};

} // namespace duskrow::sync
