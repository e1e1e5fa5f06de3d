// SPDX-License-Identifier: MIT
#include "sync/exchange/report.h"

namespace duskrow::sync {

bool goesOn(const Journey& journey, std::int64_t done, std::int64_t all, ExchangeReport& report)
{
    if (journey && !journey(done, all)) report.wasStopped = true;
    return !report.wasStopped;
}

} // namespace duskrow::sync
