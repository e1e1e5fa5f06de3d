// SPDX-License-Identifier: MIT
#include "sync/hub/limiter.h"

#include <algorithm>
#include <cmath>

namespace duskrow::hub {

namespace {

constexpr std::size_t manyNames = 10'000;

}

Limiter::Bucket& Limiter::filled(const std::string& name, domain::Instant now)
{
    const auto leftAt = [&](const Bucket& bucket) {
        // A clock set back gives nothing and takes nothing.
        const double minutes = std::max(0.0, static_cast<double>((now - bucket.at).count()) / 60'000.0);
        return std::min(m_rate.atOnce, bucket.left + minutes * m_rate.perMinute);
    };
    if (m_buckets.size() >= manyNames)
        std::erase_if(m_buckets, [&](const auto& row) { return leftAt(row.second) >= m_rate.atOnce; });
    const auto [row, isNew] = m_buckets.try_emplace(name, Bucket{m_rate.atOnce, now});
    if (!isNew) row->second = {leftAt(row->second), now};
    return row->second;
}

std::int64_t Limiter::waitOf(const Bucket& bucket) const
{
    if (bucket.left >= 1) return 0;
    return std::max<std::int64_t>(1, std::llround(std::ceil((1 - bucket.left) * 60 / m_rate.perMinute)));
}

std::int64_t Limiter::secondsToWait(const std::string& name, domain::Instant now)
{
    const std::lock_guard guard(m_mutex);
    Bucket& bucket = filled(name, now);
    const std::int64_t wait = waitOf(bucket);
    if (wait == 0) bucket.left -= 1;
    return wait;
}

std::int64_t Limiter::wouldWait(const std::string& name, domain::Instant now)
{
    const std::lock_guard guard(m_mutex);
    return waitOf(filled(name, now));
}

} // namespace duskrow::hub
