// SPDX-License-Identifier: MIT
#include "domain/rules/trap_place.h"

namespace duskrow::domain {

std::optional<TrapSpot> spotOn(const TrapFacts& facts, LocalDay day)
{
    std::optional<TrapSpot> spot;
    if (const auto place = facts.trap.place()) spot = TrapSpot{*place, facts.trap.accuracy};
    std::optional<LocalDay> since;
    for (const Service& service : facts.services) {
        if (service.what != ServiceWhat::Move || !service.withdrawn.empty()) continue;
        if (!service.day || *service.day > day || (since && *service.day < *since)) continue;
        if (!service.latE7 || !service.lonE7) continue;
        since = service.day;
        spot =
            TrapSpot{{static_cast<std::int32_t>(*service.latE7), static_cast<std::int32_t>(*service.lonE7)},
                service.accuracy};
    }
    return spot;
}

} // namespace duskrow::domain
