// SPDX-License-Identifier: MIT
#include "domain/rules/trap_now.h"

#include <algorithm>

#include "domain/rules/trap_place.h"

namespace duskrow::domain {

namespace {

std::span<const Visit> upTo(LocalDay today, std::span<const Visit> visits)
{
    const auto later = std::find_if(
        visits.begin(), visits.end(), [&](const Visit& visit) { return visit.day && *visit.day > today; });
    return visits.first(static_cast<std::size_t>(later - visits.begin()));
}

bool isKnown(const Record& record, std::optional<LocalDay> day, LocalDay today)
{
    return record.withdrawn.empty() && day && *day <= today;
}

// Found at a visit: once true it stands until a later visit says otherwise. What a renewal on that day or
// after it has mended is not noted.
void note(std::optional<LocalDay>& found, std::optional<bool> isSo, LocalDay day, const RenewedPart& part)
{
    if (!isSo || (part.since && day <= *part.since && part.wasRenewed)) return;
    if (!*isSo)
        found.reset();
    else if (!found)
        found = day;
}

std::optional<bool> lureGone(const Visit& visit)
{
    if (visit.state == TrapState::LureGone) return true;
    if (visit.lureThere) return !*visit.lureThere;
    return std::nullopt;
}

std::optional<bool> negated(std::optional<bool> value)
{
    return value ? std::optional(!*value) : std::nullopt;
}

void takeVisit(TrapNow& now, const Visit& visit)
{
    const LocalDay day = *visit.day;
    now.lastSeen = now.lastSeen ? std::max(*now.lastSeen, day) : day;
    if (visit.emptied == true) now.lastEmptied = day;
    note(now.lure.goneSince, lureGone(visit), day, now.lure);
    note(now.strip.goneSince, negated(visit.stripThere), day, now.strip);
    note(now.strip.spentSince, visit.mothsAlive, day, now.strip);
    if (visit.canopy) now.canopy.push_back({day, *visit.canopy});
    now.isFloweringOver = visit.floweringOver.value_or(now.isFloweringOver);
}

void renew(RenewedPart& part, LocalDay day, std::optional<LocalDay> expiry)
{
    if (part.since && *part.since > day) return;
    part.since = day;
    part.expiry = expiry;
    part.wasRenewed = true;
}

struct EntranceOfDay {
    std::optional<LocalDay> day;
    std::optional<Millimetres> entrance;

    void take(LocalDay on, std::optional<Millimetres> height)
    {
        if (!height || (day && on < *day)) return;
        day = on;
        entrance = height;
    }
};

TrapNow atSetUp(const Trap& trap, LocalDay today)
{
    TrapNow now;
    if (!trap.setDay || *trap.setDay > today) return now;
    now.lastSeen = now.lastEmptied = trap.setDay;
    if (trap.lureIn == true) now.lure = {.since = trap.setDay, .expiry = trap.lureExpiry};
    if (trap.stripIn == true) now.strip.since = trap.setDay;
    if (trap.canopy) now.canopy.push_back({*trap.setDay, *trap.canopy});
    return now;
}

} // namespace

TrapNow trapNow(const TrapFacts& facts, LocalDay today)
{
    TrapNow now = atSetUp(facts.trap, today);
    now.visits = upTo(today, facts.visits);
    if (const auto spot = spotOn(facts, today)) now.place = spot->place;
    EntranceOfDay entrance;
    entrance.take(facts.trap.setDay.value_or(LocalDay::min()), facts.trap.entrance);
    for (const Service& service : facts.services) {
        if (!isKnown(service, service.day, today)) continue;
        if (service.what == ServiceWhat::Lure) renew(now.lure, *service.day, service.lureExpiry);
        if (service.what == ServiceWhat::Strip) renew(now.strip, *service.day, std::nullopt);
        entrance.take(*service.day, service.entrance);
    }
    for (const Visit& visit : now.visits) {
        if (!isKnown(visit, visit.day, today)) continue;
        takeVisit(now, visit);
        entrance.take(*visit.day, visit.entrance);
    }
    now.entrance = entrance.entrance;
    return now;
}

} // namespace duskrow::domain
