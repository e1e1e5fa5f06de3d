// SPDX-License-Identifier: MIT
#include "sim/phone.h"

#include <algorithm>

#include "sim/world.h"
#include "store/segments.h"

namespace duskrow::sim {

using namespace duskrow::domain;

Uuid Phone::member(const World& world) const
{
    return world.people[person].member;
}

namespace {

// Whether something under the own numbers came from elsewhere; the visit that brought it may have broken off
// before it could say so.
bool hasMetItself(store::Reader& reader, const StreamId& own)
{
    bool hasMet = false;
    const auto done =
        reader.eachRow("SELECT EXISTS (SELECT 1 FROM segment JOIN stream ON local=stream WHERE "
                       "lower(hex(stream.id))=?1 AND waits=1) OR EXISTS (SELECT 1 FROM setting WHERE "
                       "key='forked/' || ?1)",
            {formatHex(own)}, [&](SQLite::Statement& q) { hasMet = q.getColumn(0).getInt() != 0; });
    return done && hasMet;
}

} // namespace

void Phone::open(World& world)
{
    const bool isFirst = !fs::exists(path());
    StreamId before{};
    for (const auto& [known, owner] : world.owners)
        if (owner.second == lastKey) before = known;
    store::OpenHow how;
    how.keyFolder = folder / "live" / "keys";
    how.mayCreate = isFirst;
    how.programme = world.programme;
    if (number != 0) how.founders = world.founders;
    fs::create_directories(folder / "live");
    auto opened = store::Store::open(path(), how);
    if (!opened)
        broken("phone " + std::to_string(number) + " does not open: "
            + std::to_string(static_cast<int>(opened.error().code)) + " " + opened.error().detail);
    store = std::move(*opened);
    auto read = store->reader();
    if (!read) broken("no reader: " + read.error().detail);
    reader = std::move(*read);
    lastKey = store->publicKey();
    streams.insert(store->stream());
    world.owners[store->stream()] = {person, store->publicKey()};
    const bool isOther = before != StreamId{} && before != store->stream();
    if (isOther && !mayRenew && !hasMetItself(*reader, before))
        broken(
            "phone " + std::to_string(number) + " began a new stream though nothing happened to the old one");
    if (isOther) {
        hub = {};
        // The new stream has said from which it goes on.
        for (const int line : heldBy(*reader, world.book, streams, true).used)
            if (world.book.at(line).ref.stream == store->stream()) {
                expected.used.insert(line);
                expected.whole.insert(line);
            }
    }
    mayRenew = false;
}

void Phone::close()
{
    reader.reset();
    store.reset();
}

void Phone::audit(World& world, const std::string& after, bool mayBeNew)
{
    const std::string who = "phone " + std::to_string(number) + ", after " + after + ": ";
    Held found = heldBy(*reader, world.book, streams, mayBeNew);
    for (const int line : expected.used)
        if (!found.used.contains(line))
            broken(who + "a change is lost (I1): " + canonicalJson(world.book.at(line)));
    for (const int line : expected.waiting)
        if (!found.has(line)) broken(who + "a waiting change is lost (I8)");
    for (const std::string& segment : expected.segments)
        if (!found.segments.contains(segment)) broken(who + "a segment is lost (I8)");
    for (const std::string& hash : expected.aside)
        if (!found.aside.contains(hash)) broken(who + "what was kept aside is gone (I8)");
    for (const std::string& hash : found.aside) {
        const std::string name = formatHex({reinterpret_cast<const std::uint8_t*>(hash.data()), hash.size()});
        if (!fs::exists(path() + ".d/aside/" + name)) broken(who + "kept aside without its bytes (I8)");
    }
    found.pictures = picturesBeside(world, *this);
    for (const std::string& name : expected.pictures)
        if (!found.pictures.contains(name)) broken(who + "the photograph " + name + " is lost (I1)");
    expected = std::move(found);
    checkCounts(world, who);
}

// What a person is told must be what is there (I10).
void Phone::checkCounts(World& world, const std::string& who) const
{
    const auto aside = store::asideRows(*reader);
    if (!aside || aside->size() != expected.aside.size()) broken(who + "other things aside than shown (I10)");
    const auto states = store::streamStates(*reader);
    if (!states) broken(who + "no states");
    std::map<StreamId, std::int64_t> used;
    std::map<StreamId, std::set<std::int64_t>> own;
    for (const int line : expected.used) {
        const ChangeRef& ref = world.book.at(line).ref;
        used[ref.stream] = std::max(used[ref.stream], ref.seq);
        if (ref.stream == store->stream()) own[ref.stream].insert(ref.seq);
    }
    for (const auto& [stream, last] : used)
        if (states->contains(stream) ? states->at(stream).used < last : true)
            broken(who + "a stream goes further than shown (I10)");
    for (const int line : expected.waiting) {
        const ChangeRef& ref = world.book.at(line).ref;
        const auto state = states->find(ref.stream);
        if (state == states->end() || state->second.known < ref.seq)
            broken(who + "something waits that is not shown (I10)");
    }
    const auto mine = states->find(store->stream());
    if (wasCopied || (mine != states->end() && mine->second.isForked)) return;
    const auto counts = store::handedOver(*reader, store->stream());
    const auto total = static_cast<std::int64_t>(own[store->stream()].size());
    if (!counts || counts->here + counts->handedOver + counts->atHub != total)
        broken(who + "own changes: " + std::to_string(total) + " there, shown "
            + std::to_string(counts ? counts->here : -1) + "+"
            + std::to_string(counts ? counts->handedOver : -1) + "+"
            + std::to_string(counts ? counts->atHub : -1) + " (I10)");
}

} // namespace duskrow::sim
