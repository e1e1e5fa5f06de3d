// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <mutex>
#include <string>

#include "domain/base/time.h"

namespace duskrow::hub {

// So much at once, and so much again each minute, for each name. Names that are at rest are forgotten.
class Limiter {
public:
    struct Rate {
        double atOnce = 0;
        double perMinute = 0;
    };

    explicit Limiter(Rate rate) : m_rate(rate) { }

    // Takes one. Otherwise the seconds until there is one again.
    std::int64_t secondsToWait(const std::string& name, domain::Instant now);
    // As above, and takes nothing.
    std::int64_t wouldWait(const std::string& name, domain::Instant now);

private:
    struct Bucket {
        double left = 0;
        domain::Instant at;
    };

    Bucket& filled(const std::string& name, domain::Instant now);
    [[nodiscard]] std::int64_t waitOf(const Bucket& bucket) const;

    Rate m_rate;
    std::mutex m_mutex;
    std::map<std::string, Bucket> m_buckets;
};

} // namespace duskrow::hub
