// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <vector>

#include "domain/base/result.h"

namespace duskrow::sync {

// What one exchange came to. A trouble is something that did not stop it.
struct ExchangeReport {
    std::int64_t sent = 0; // segments handed over for the first time on this way
    std::int64_t received = 0; // segments that were not here before, or less of them
    std::int64_t changes = 0; // that are among the records now
    std::int64_t waiting = 0; // segments that wait for the one before them
    std::int64_t unfinished = 0; // files that are not finished copying
    std::int64_t keptAside = 0; // files that were refused, with the reason
    std::int64_t photosSent = 0;
    std::int64_t photosReceived = 0;
    bool metFork = false; // other content under the same numbers
    bool wasStopped = false; // by the person; what was done is done
    std::vector<domain::Error> troubles;
};

// Called now and then with how much is done of how much; false stops.
using Journey = std::function<bool(std::int64_t done, std::int64_t all)>;

// Whether a person wants to go on.
bool goesOn(const Journey& journey, std::int64_t done, std::int64_t all, ExchangeReport& report);

} // namespace duskrow::sync
