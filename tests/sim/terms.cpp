// SPDX-License-Identifier: MIT
// What runs out: memberships and loans.
#include "domain/records/roster.h"
#include "sim/world.h"

namespace duskrow::sim {

using namespace duskrow::domain;

namespace {

LocalDay today(const World& world)
{
    return dayOf(world.now, std::chrono::minutes(-300));
}

} // namespace

void stepTerm(World& world)
{
    Random& random = world.random;
    Phone& phone = random.percent(85) ? coordinator(world) : world.anyPhone();
    // Who made the programme stays: somebody must be able to let the others in.
    const Uuid member = world.people[1 + random.below(world.people.size() - 1)].member;
    const bool isLifted = random.percent(40);
    world.fault(isLifted ? "membership prolonged" : "membership given a last day");
    const Value until =
        isLifted ? Value{} : Value{formatDay(today(world) + std::chrono::days(random.between(-1, 2)))};
    keep(world, phone, {{"member", member, {}, {{"until_day", until}}}});
}

void lend(World& world, Phone& phone)
{
    Random& random = world.random;
    if (world.places.empty()) return;
    if (!world.loans.empty() && random.percent(25)) { // an earlier one is prolonged, cut short or called off
        Loan& loan = random.of(world.loans);
        Edit edit{"loan", loan.record, loan.place.site, {}};
        loan.until = today(world) + std::chrono::days(random.between(-1, 3));
        edit.fields["until_day"] = formatDay(*loan.until);
        if (random.percent(20)) edit.fields["withdrawn"] = std::string("over");
        return keep(world, phone, {edit});
    }
    Loan loan{world.freshId(), random.of(world.places), random.below(world.people.size()), {}};
    ByName<Value> fields{
        {"trap", formatUuid(loan.place.trap)}, {"member", formatUuid(world.people[loan.person].member)}};
    if (random.percent(50)) fields["from_day"] = formatDay(today(world) - std::chrono::days(1));
    if (random.percent(60)) {
        loan.until = today(world) + std::chrono::days(random.between(-1, 2));
        fields["until_day"] = formatDay(*loan.until);
    }
    world.loans.push_back(loan);
    keep(world, phone, {{"loan", loan.record, loan.place.site, fields}});
}

void stepLend(World& world)
{
    lend(world, world.anyPhone());
}

// A trap that was lent to whoever holds this phone, if one was.
std::optional<Place> borrowed(World& world, const Phone& phone)
{
    if (world.loans.empty()) return std::nullopt;
    const Loan& loan = world.random.of(world.loans);
    if (loan.person != phone.person) return std::nullopt;
    world.fault(loan.until && today(world) > *loan.until ? "work after a loan ran out" : "work on a loan");
    return loan.place;
}

} // namespace duskrow::sim
