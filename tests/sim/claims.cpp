// SPDX-License-Identifier: MIT
// Invitations that several claim, that ran out, or whose proof was copied.
#include <sodium.h>

#include "domain/records/roster.h"
#include "sim/world.h"

namespace duskrow::sim {

using namespace duskrow::domain;

namespace {

struct Invited {
    Uuid invitation;
    const std::array<std::uint8_t, 64>* secret = nullptr;
};

// A code given out on the way, good for a few days or not any more.
Invited inviteAgain(World& world, Phone& coordinator)
{
    Invitation made;
    made.person = 1 + world.random.below(world.people.size() - 1);
    made.id = world.freshId();
    PublicKey key{};
    std::array<std::uint8_t, 32> seed{};
    for (std::uint8_t& byte : seed) byte = static_cast<std::uint8_t>(world.random.next());
    crypto_sign_seed_keypair(key.data(), made.secret.data(), seed.data());
    const LocalDay until =
        dayOf(world.now, std::chrono::minutes(-300)) + std::chrono::days(world.random.between(-1, 2));
    keep(world, coordinator,
        {{"invitation", made.id, {},
            {{"member", formatUuid(world.people[made.person].member)}, {"key", formatHex(key)},
                {"until_day", formatDay(until)}}}});
    world.invitations.push_back(made);
    world.count("invitations given out on the way");
    return {made.id, &world.invitations.back().secret};
}

Invited anyInvitation(World& world, Phone& coordinator)
{
    Random& random = world.random;
    if (random.percent(40) || world.invitations.empty()) {
        if (world.invitations.size() < 6) return inviteAgain(world, coordinator);
    }
    const auto at = random.below(world.people.size() - 1 + world.invitations.size());
    if (at < world.people.size() - 1)
        return {world.people[at + 1].invitation, &world.people[at + 1].invitationSecret};
    const Invitation& made = world.invitations[at - (world.people.size() - 1)];
    return {made.id, &made.secret};
}

Change claimOf(World& world, const Stranger& one, const StreamId& provenFor, const Invited& invited)
{
    const std::string text = claimMessage(world.programme, provenFor);
    Signature proof{};
    crypto_sign_detached(proof.data(), nullptr, reinterpret_cast<const unsigned char*>(text.data()),
        text.size(), invited.secret->data());
    Change change;
    change.author = world.random.of(world.people).member;
    change.at = world.now;
    change.kind = "device";
    change.record = deviceId(world.programme, one.stream());
    change.fields = {{"stream", {formatHex(one.stream()), {}}}, {"key", {formatHex(one.key()), {}}},
        {"label", {std::string("another phone"), {}}}, {"invitation", {formatUuid(invited.invitation), {}}},
        {"proof", {formatHex(proof), {}}}};
    return change;
}

// The segment with the claim goes to a phone, to the hub, or to both.
void present(World& world, const std::string& bytes)
{
    if (world.random.percent(60)) {
        Phone& phone = world.anyPhone();
        deliver(world, phone, bytes);
        phone.audit(world, "a claim");
    }
    if (!world.random.percent(60) || !world.hub->isOpen()) return;
    hub::Request request;
    request.method = hub::Method::Post;
    request.target = "/v1/programmes/" + formatUuid(world.programme) + "/join";
    request.address = "192.0.2.8";
    request.headers["content-type"] = "application/octet-stream";
    request.body = bytes;
    const hub::Response answer = world.hub->ask(request);
    if (answer.status == 403)
        world.count("claims refused by the hub");
    else if (answer.status != 200 && answer.status != 201)
        broken("a claim is answered " + std::to_string(answer.status) + " " + answer.body);
}

} // namespace

// Somebody else uses a code, too: then nobody's claim counts until a coordinator has said whose does.
void stepClaim(World& world)
{
    Random& random = world.random;
    if (world.claimants >= 6) return;
    const Invited invited = anyInvitation(world, *world.phones[0]);
    const auto several = 1 + random.below(2);
    for (std::size_t i = 0; i < several; ++i) {
        world.strangers.push_back(std::make_unique<Stranger>(world.programme, random.next()));
        Stranger& one = *world.strangers.back();
        ++world.claimants;
        const bool isCopied = random.percent(15);
        const StreamId provenFor = isCopied ? world.phones[0]->stream() : one.stream();
        one.write(world.book, claimOf(world, one, provenFor, invited));
        world.fault(isCopied ? "claim with a copied proof" : "rival claim");
        if (random.percent(50)) one.write(world.book, strangeChange(world));
        // A coordinator may believe one of them, one day.
        if (random.percent(30))
            world.owners[one.stream()] = {1 + random.below(world.people.size() - 1), one.key()};
        present(world, one.seal(world.book));
    }
}

} // namespace duskrow::sim
