// SPDX-License-Identifier: MIT
// What devices write that are of a newer version, of nobody, or of somebody who lies.
#include "sim/world.h"

namespace duskrow::sim {

using namespace duskrow::domain;

Change strangeChange(World& world)
{
    Random& random = world.random;
    Change change;
    change.author = random.of(world.people).member;
    change.at = world.now;
    change.record = world.freshId();
    if (!world.places.empty()) change.site = random.of(world.places).site;
    switch (random.below(5)) {
    case 0:
        change.kind = "drone_flight"; // a kind of a newer version
        change.fields["height_mm"] = {std::int64_t{4000}, {}};
        break;
    case 1: // a field and a code of a newer version
        change.kind = "visit";
        if (!world.places.empty()) change.fields["trap"] = {formatUuid(world.places[0].trap), {}};
        change.fields["pest"] = {random.between(0, 5), {}};
        change.fields["state"] = {std::string("eaten"), {}};
        change.fields["moon"] = {domain::RawJson{R"({"phase":3})"}, {}};
        break;
    case 2: // edits somebody's record without having seen anything
        if (world.book.size() > 0) {
            const Change& other =
                world.book.at(static_cast<int>(random.below(static_cast<std::size_t>(world.book.size()))));
            change.kind = other.kind;
            change.record = other.record;
            change.site = other.site;
            for (const auto& [name, set] : other.fields) {
                change.fields[name] = {set.value, {}};
                if (random.percent(50)) change.fields[name].base.push_back(other.ref);
                if (random.percent(30)) break;
            }
            break;
        }
        [[fallthrough]];
    case 3:
        change.kind = "member"; // makes itself coordinator
        change.site = {};
        change.fields["role"] = {std::string("coordinator"), {}};
        break;
    default:
        change.kind = "visit";
        change.fields["trap"] = {formatUuid(world.freshId()), {}};
        change.fields["pest"] = {random.between(0, 5), {}};
    }
    return change;
}

void stepStranger(World& world)
{
    Random& random = world.random;
    const auto others = world.strangers.size() - static_cast<std::size_t>(world.claimants);
    if (others < 3 && random.percent(20)) {
        world.strangers.push_back(std::make_unique<Stranger>(world.programme, random.next()));
        // Some of them are let in one day, as devices of people.
        if (random.percent(60))
            world.owners[world.strangers.back()->stream()] = {
                world.people.size() > 2 ? 2 + random.below(world.people.size() - 2) : 1,
                world.strangers.back()->key()};
    }
    if (world.strangers.empty()) return;
    Stranger& one = *random.of(world.strangers);
    const auto changes = 1 + random.below(3);
    for (std::size_t i = 0; i < changes; ++i) one.write(world.book, strangeChange(world));
    world.fault("strange change");
    std::string bytes = one.seal(world.book, random.percent(15) ? "holograms" : "");
    if (random.percent(10)) {
        bytes = one.sealAgain(world.book, strangeChange(world));
        world.fault("equivocation");
    } else if (random.percent(15)) {
        const Stranger other(world.programme, random.next());
        bytes = other.forge(bytes);
        world.fault("forged");
    }
    if (bytes.empty()) return;
    Phone& phone = world.anyPhone();
    deliver(world, phone, bytes);
    phone.audit(world, "a stranger");
}

} // namespace duskrow::sim
