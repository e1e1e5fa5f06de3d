// SPDX-License-Identifier: MIT
// What must hold in the end, when every link is good again.
#include <algorithm>

#include "sim/naive_tables.h"
#include "sim/world.h"
#include "store/check.h"
#include "store/segments.h"
#include "sync/exchange/segments_of_store.h"

namespace duskrow::sim {

using namespace duskrow::domain;

namespace {

// By FORMAT.md section 5: whoever made the programme and was put back from when he was alone is a founder
// too, until others turn up.
std::set<StreamId> foundersFor(const World& world, const Phone& phone, const Changes& changes)
{
    std::set<StreamId> founders = world.founders;
    if (phone.person != 0) return founders;
    const NaiveRoster roster(world.programme, founders, changes, phone.store->stream());
    founders.insert(phone.store->stream());
    return roster.isOnly(founders) ? founders : world.founders;
}

void compareWithOracle(World& world, Phone& phone)
{
    const Changes changes = world.book.changes(phone.expected.used);
    const Text expected =
        naiveTables(world.programme, foundersFor(world, phone, changes), changes, phone.store->stream());
    const std::string differs = difference(expected, tablesOf(*phone.reader));
    if (!differs.empty())
        broken("phone " + std::to_string(phone.number) + " shows other than the oracle (I5):" + differs);
}

void checkRebuild(Phone& phone)
{
    const auto report = store::checkStore(phone.path());
    if (!report) broken("the store cannot be checked: " + report.error().detail);
    if (report->integrity != "ok") broken("the file is damaged: " + report->integrity);
    if (report->unreadable != 0) broken("unreadable changes: " + std::to_string(report->unreadable));
    if (report->gaps != 0) broken("gaps: " + std::to_string(report->gaps));
    if (!report->tablesEqual)
        broken("phone " + std::to_string(phone.number) + ": a rebuild gives other tables (I7)");
}

// Into an empty store in any order, with repetitions: the same comes out (I6).
void replay(World& world, Phone& from)
{
    std::vector<std::string> segments;
    const auto rows = store::segmentRows(*from.reader);
    if (!rows) broken("rows cannot be read");
    for (const store::SegmentRow& row : *rows)
        if (const auto bytes = sync::bytesOf(*from.reader, row.id); bytes && *bytes)
            segments.push_back(**bytes);
    for (std::size_t i = segments.size(); i > 1; --i)
        std::swap(segments[i - 1], segments[world.random.below(i)]);
    const std::size_t repeated = segments.size() / 3;
    for (std::size_t i = 0; i < repeated; ++i) segments.push_back(segments[i]);
    Phone fresh;
    fresh.number = 1000;
    fresh.folder = world.root / "replay";
    fresh.mayRenew = true;
    fresh.open(world);
    world.owners.erase(fresh.stream());
    for (const std::string& bytes : segments) deliver(world, fresh, bytes);
    fresh.audit(world, "a replay");
    if (fresh.expected.used != from.expected.used) broken("a replay uses other changes (I6)");
    const std::string differs = difference(tablesOf(*from.reader), tablesOf(*fresh.reader));
    if (!differs.empty()) broken("a replay in another order shows something else (I6):" + differs);
    fresh.close();
    fs::remove_all(fresh.folder);
}

void heal(World& world)
{
    for (const auto& [path, bytes] : world.stash)
        std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
    world.stash.clear();
    world.parcels.clear();
    for (const auto& stranger : world.strangers)
        for (const std::string& bytes : stranger->segments) deliver(world, world.anyPhone(), bytes);
    for (auto& phone : world.phones) {
        phone->close();
        phone->open(world);
    }
}

bool oneRound(World& world)
{
    // Why it is not quiet, for the message when it never is.
    std::string& why = world.unrest;
    why.clear();
    for (auto& phone : world.phones) {
        const std::string who = " phone " + std::to_string(phone->number);
        if (!exchangeFolder(world, *phone)) why += who + " had something to exchange;";
        if (phone->mayRenew) {
            const StreamId before = phone->stream();
            phone->close();
            phone->open(world);
            if (before != phone->stream()) why += who + " began a new stream;";
        }
        const auto before = phone->expected.used.size();
        enrolEverybody(world, *phone);
        if (phone->expected.used.size() != before) why += who + " let somebody in;";
        visitHub(world, *phone, true);
        phone->audit(world, "healing");
    }
    return why.empty();
}

// Streams that nobody is left to let in. The roots came back without the keys of theirs: they let in
// coordinators. Two claim the invitation of the last coordinator, and no root can say whose it is: all
// others.
std::set<StreamId> shutOut(World& world)
{
    std::set<StreamId> outside;
    std::set<StreamId> coordinators; // that are not let in
    bool isCoordinatorLeft = false;
    for (const auto& phone : world.phones) {
        const StreamId stream = phone->stream();
        const auto roster = store::rosterOf(*phone->reader, world.programme);
        if (!roster) broken("a roster cannot be read");
        if (roster->isRoot(stream)) return {};
        isCoordinatorLeft = isCoordinatorLeft || roster->isCoordinator(stream);
        const auto owner = world.owners.find(stream);
        if (owner == world.owners.end() || roster->isEnrolled(stream)) continue;
        outside.insert(stream);
        if (world.people[owner->second.first].role == "coordinator") coordinators.insert(stream);
    }
    return isCoordinatorLeft ? coordinators : outside;
}

// What nobody can pass on any more, since the hub and its author were put back: a segment that is nowhere
// whole, or whose predecessor is nowhere, and all that follows in its stream.
Lines strayLines(World& world)
{
    std::map<store::SegmentId, store::SegmentRow> all;
    std::set<store::SegmentId> whole;
    for (const auto& phone : world.phones) {
        const auto rows = store::segmentRows(*phone->reader);
        if (!rows) broken("rows cannot be read");
        for (const store::SegmentRow& row : *rows) {
            all.emplace(row.id, row);
            if (row.isWhole || world.hub->has(row.id)) whole.insert(row.id);
        }
    }
    std::map<StreamId, std::int64_t> from;
    for (const auto& [id, row] : all) {
        const bool isFollowed = row.first == 1 || whole.contains(row.previous);
        if (whole.contains(id) && isFollowed) continue;
        const auto [known, isNew] = from.try_emplace(row.stream, row.first);
        known->second = std::min(known->second, row.first);
    }
    for (const StreamId& stream : shutOut(world)) from[stream] = 1;
    Lines stray;
    for (const auto& phone : world.phones)
        for (const int line : phone->expected.used) {
            const ChangeRef& ref = world.book.at(line).ref;
            const auto known = from.find(ref.stream);
            if (known != from.end() && ref.seq >= known->second) stray.insert(line);
        }
    return stray;
}

Lines among(const Phone& phone, const Lines& lines)
{
    Lines held;
    std::set_intersection(lines.begin(), lines.end(), phone.expected.used.begin(), phone.expected.used.end(),
        std::inserter(held, held.end()));
    return held;
}

std::string lackingAmong(World& world, const Phone& one, const Phone& other, const Lines& stray)
{
    std::string text;
    for (const int line : one.expected.used) {
        if (other.expected.used.contains(line) || stray.contains(line)) continue;
        text += "\n  phone " + std::to_string(one.number) + " uses, phone " + std::to_string(other.number)
            + (other.expected.waiting.contains(line) ? " lets wait " : " lacks ")
            + canonicalJson(world.book.at(line));
        if (text.size() > 1200) break;
    }
    return text;
}

void checkTogether(World& world)
{
    Phone& first = *world.phones[0];
    const Lines stray = strayLines(world);
    world.count("changes that nobody can pass on any more", static_cast<long>(stray.size()));
    for (auto& phone : world.phones) {
        const std::string lacking =
            lackingAmong(world, first, *phone, stray) + lackingAmong(world, *phone, first, stray);
        if (!lacking.empty()) broken("not the same is held everywhere (I3):" + lacking);
        if (among(first, stray) != among(*phone, stray)) continue;
        const std::string differs = difference(tablesOf(*first.reader), tablesOf(*phone->reader));
        if (!differs.empty())
            broken(
                "phones 0 and " + std::to_string(phone->number) + " show different things (I3):" + differs);
    }
    const std::set<StreamId> outside = shutOut(world); // count on their own phones only
    for (const int line : world.mustLive) {
        const auto isThere = [&](const auto& phone) { return phone->expected.has(line); };
        const bool lives = outside.contains(world.book.at(line).ref.stream)
            ? std::any_of(world.phones.begin(), world.phones.end(), isThere)
            : first.expected.has(line);
        if (!lives)
            broken("a change that was called saved is nowhere (I4): " + canonicalJson(world.book.at(line)));
    }
}

void checkHub(World& world)
{
    world.hub->audit();
    Lines there;
    for (const auto& all : {world.hub->log(), world.hub->aside()})
        for (const std::string& bytes : all) {
            const auto lines = linesIn(bytes, world.book);
            there.insert(lines.begin(), lines.end());
        }
    const Lines stray = strayLines(world);
    for (const int line : world.phones[0]->expected.used)
        if (!there.contains(line) && !stray.contains(line))
            broken("a change never came to the hub (I3): " + canonicalJson(world.book.at(line)));
}

} // namespace

void stepCompare(World& world)
{
    Phone& phone = world.anyPhone();
    compareWithOracle(world, phone);
    checkRebuild(phone);
}

void World::finish()
{
    heal(*this);
    int round = 0;
    for (int quiet = 0; quiet < 2;) {
        quiet = oneRound(*this) ? quiet + 1 : 0;
        if (++round > 15) broken("exchange does not come to rest (I3):" + unrest);
    }
    for (auto& phone : phones) compareWithOracle(*this, *phone);
    checkTogether(*this);
    for (std::size_t i = 0; i < phones.size(); i += phones.size() - 1) checkRebuild(*phones[i]);
    checkHub(*this);
    checkPictures(*this, strayLines(*this));
    // What is not let in, or claims what another claims too, counts on its own device only.
    const auto isLetIn = [&](const auto& phone) {
        const auto roster = store::rosterOf(*phone->reader, programme);
        return roster && !roster->memberOf(phone->stream()).isNil();
    };
    const auto from = std::find_if(phones.begin(), phones.end(), isLetIn);
    if (from != phones.end()) replay(*this, **from);
}

} // namespace duskrow::sim
