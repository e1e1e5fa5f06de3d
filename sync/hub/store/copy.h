// SPDX-License-Identifier: MIT
#pragma once

#include "sync/hub/store/hub_store.h"

namespace duskrow::hub {

// Copies everything but tokens, used nonces and the hubs' secret into a store that holds nothing. From a
// state of one moment, while hubs serve from it.
//
// Errors  StoreExists {} when the other holds something; those of both stores
Result<Done> copyStore(Engine& from, Engine& to);

// After a restore: other epochs, so that devices notice and hand over again what is missing.
Result<Done> renewEpochs(Engine& store, Instant now);

// What a check found. Sound when `faults` is empty.
struct StoreReport {
    std::int64_t programmes = 0;
    std::int64_t segments = 0;
    std::int64_t changes = 0;
    std::int64_t aside = 0;
    std::int64_t photographs = 0;
    std::vector<std::string> faults;
};

// Reads everything: each segment with all its checks, numbers without gaps, counters, facts, photographs.
Result<StoreReport> checkStore(HubStore& store);

} // namespace duskrow::hub
