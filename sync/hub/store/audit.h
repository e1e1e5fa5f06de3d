// SPDX-License-Identifier: MIT
#pragma once

#include "sync/hub/store/hub_store.h"

namespace duskrow::hub {

// A line of the audit, as part of the transaction it speaks of.
void note(Session& session, const Uuid& programme, const StreamId& who, const std::string& what,
    const std::string& detail, Instant now);

} // namespace duskrow::hub
