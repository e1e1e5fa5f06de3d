// SPDX-License-Identifier: MIT
// What people do on their phones.
#include <algorithm>

#include "domain/records/roster.h"
#include "sim/world.h"
#include "store/segments.h"

namespace duskrow::sim {

using namespace duskrow::domain;

void keep(World& world, Phone& phone, std::vector<Edit> edits)
{
    store::Batch batch;
    batch.author = phone.member(world);
    batch.at = world.timeOf(phone);
    batch.offset = std::chrono::minutes(-300);
    batch.edits = std::move(edits);
    const auto kept = phone.store->keepNow(batch);
    if (!kept) {
        if (world.isFailing) return;
        broken("phone " + std::to_string(phone.number) + " cannot keep: " + kept.error().detail + " code "
            + std::to_string(static_cast<int>(kept.error().code)));
    }
    for (const ChangeRef& ref : kept->changes) {
        std::string body;
        const auto done = phone.reader->eachRow(
            "SELECT body FROM change JOIN stream ON local=stream WHERE seq=? AND lower(hex(id))=?",
            {ref.seq, formatHex(ref.stream)},
            [&](SQLite::Statement& q) { body = q.getColumn(0).getString(); });
        if (!done || body.empty()) broken("what was kept is not there (I1)");
        const int line = world.book.write(body);
        phone.expected.used.insert(line);
        phone.expected.whole.insert(line);
        world.mustLive.insert(line);
        const auto photo = world.book.at(line).fields.find("photo");
        if (photo == world.book.at(line).fields.end()) continue;
        if (const auto* name = std::get_if<std::string>(&photo->second.value);
            name && world.pictures.contains(*name))
            if (phone.expected.pictures.contains(*name)) world.mustSee.insert(*name);
    }
}

namespace {

Edit newVisit(World& world, Phone& phone, const Place& place)
{
    Edit edit{"visit", world.freshId(), place.site, {}};
    edit.fields["trap"] = formatUuid(place.trap);
    edit.fields["day"] = formatDay(dayOf(world.now, std::chrono::minutes(-300)));
    edit.fields["outcome"] = std::string("counted");
    edit.fields["pest"] = world.random.between(0, 5);
    if (world.random.percent(30)) edit.fields["remark"] = "wind " + std::to_string(world.random.below(3));
    if (world.random.percent(4) && world.pictures.size() < 40)
        if (const std::string name = takePicture(world, phone); !name.empty()) edit.fields["photo"] = name;
    return edit;
}

void setSomething(World& world, Edit& edit)
{
    Random& random = world.random;
    if (edit.kind == "visit") {
        if (random.percent(60)) edit.fields["pest"] = random.between(0, 5);
        if (random.percent(30)) edit.fields["remark"] = "rain " + std::to_string(random.below(4));
        if (random.percent(20)) edit.fields["emptied"] = random.percent(50);
        if (edit.fields.empty() || random.percent(10))
            edit.fields["observer"] = std::to_string(random.below(3));
    } else if (edit.kind == "trap")
        edit.fields[random.percent(50) ? "tag" : "remark"] = std::to_string(random.below(5));
    else if (edit.kind == "site")
        edit.fields[random.percent(50) ? "name" : "gate"] = std::to_string(random.below(5));
    else if (edit.kind == "service")
        edit.fields["remark"] = std::to_string(random.below(5));
    if (!edit.fields.empty() && random.percent(12)) {
        edit.fields.clear();
        edit.fields["withdrawn"] = random.percent(80) ? Value{std::string("twice")} : Value{};
    }
}

// A record of the trade that this phone knows.
const Change* knownRecord(World& world, const Phone& phone)
{
    for (int i = 0; i < 12 && world.book.size() > 0; ++i) {
        const auto line = static_cast<int>(world.random.below(static_cast<std::size_t>(world.book.size())));
        const Change& change = world.book.at(line);
        const bool isTrade = change.kind == "visit" || change.kind == "trap" || change.kind == "site"
            || change.kind == "service";
        if (isTrade && phone.expected.used.contains(line)) return &change;
    }
    return nullptr;
}

std::vector<Edit> newSite(World& world, const Phone& phone)
{
    const Place place{world.freshId(), world.freshId()};
    world.places.push_back(place);
    std::vector<Edit> edits{{"site", place.site, place.site,
                                {{"season", formatUuid(world.programme)}, {"name", std::string("a field")}}},
        {"trap", place.trap, place.site, {{"site", formatUuid(place.site)}, {"tag", std::string("1")}}}};
    if (world.random.percent(15)) edits[0].fields["keeper"] = formatUuid(phone.member(world));
    return edits;
}

} // namespace

void editSomething(World& world, Phone& phone)
{
    Random& random = world.random;
    if (world.places.size() < 2 || random.percent(2)) return keep(world, phone, newSite(world, phone));
    const std::optional<Place> lent = random.percent(15) ? borrowed(world, phone) : std::nullopt;
    const Place place = lent ? *lent : random.of(world.places);
    if (lent || random.percent(45)) {
        std::vector<Edit> edits{newVisit(world, phone, place)};
        if (random.percent(30))
            edits.push_back({"service", world.freshId(), place.site,
                {{"trap", formatUuid(place.trap)}, {"what", std::string("lure")}}});
        // Two people who set up the same trap, or one site, without having met.
        if (random.percent(8))
            edits.push_back({"trap", place.trap, place.site,
                {{"site", formatUuid(place.site)}, {"tag", std::to_string(random.below(3))}}});
        if (random.percent(3))
            edits.push_back({"site", place.site, place.site,
                {{"season", formatUuid(world.programme)}, {"name", std::string("my field")}}});
        return keep(world, phone, edits);
    }
    const Change* known = knownRecord(world, phone);
    if (known == nullptr) return keep(world, phone, {newVisit(world, phone, place)});
    Edit edit{known->kind, known->record, known->site, {}};
    setSomething(world, edit);
    keep(world, phone, {edit});
}

namespace {

void settle(World& world, Phone& phone)
{
    const auto open = store::openDifferences(*phone.reader);
    if (!open) broken("differences cannot be read");
    if (open->empty()) return editSomething(world, phone);
    const store::OpenDifference& one = world.random.of(*open);
    const auto history = phone.reader->changesOf(one.record);
    if (!history || history->empty()) broken("a difference without changes");
    for (const Change& change : *history)
        if (const auto said = change.fields.find(one.field); said != change.fields.end()) {
            world.count("difference settled");
            return keep(world, phone,
                {{one.kind, one.record, history->front().site, {{one.field, said->second.value}}}});
        }
}

void rule(World& world, Phone& phone)
{
    const Change* known = knownRecord(world, phone);
    if (known == nullptr) return;
    const std::string says = world.random.percent(70) ? "stands" : "open";
    keep(world, phone,
        {{"ruling", rulingId(world.programme, known->record), {},
            {{"record", formatUuid(known->record)}, {"says", says}}}});
}

void admit(World& world, Phone& phone)
{
    const auto aside = store::asideChanges(*phone.reader);
    if (!aside) broken("what is aside cannot be read");
    if (aside->empty()) return;
    const std::string ref = formatRef(world.random.of(*aside).change);
    world.count("change let in");
    ByName<Value> fields{{"change", ref}};
    if (world.random.percent(10)) fields = {{"withdrawn", std::string("no")}, {"change", ref}};
    keep(world, phone, {{"admission", admissionId(world.programme, ref), {}, fields}});
}

void assign(World& world, Phone& phone)
{
    if (world.places.empty()) return;
    const Uuid site = world.random.of(world.places).site;
    const Uuid member = world.random.of(world.people).member;
    ByName<Value> fields{{"member", formatUuid(member)}, {"site", formatUuid(site)}};
    if (world.random.percent(20)) fields["withdrawn"] = std::string("over");
    keep(world, phone, {{"assignment", assignmentId(world.programme, member, site), {}, fields}});
}

// The device of somebody who is no coordinator, after a change that is known here.
void endDevice(World& world, Phone& phone)
{
    const auto states = store::streamStates(*phone.reader);
    if (!states || states->empty()) return;
    auto chosen = states->begin();
    std::advance(chosen, static_cast<std::ptrdiff_t>(world.random.below(states->size())));
    const auto owner = world.owners.find(chosen->first);
    if (owner == world.owners.end() || world.people[owner->second.first].role == "coordinator") return;
    world.fault("device ended");
    keep(world, phone,
        {{"device", deviceId(world.programme, chosen->first), {},
            {{"ended_after", world.random.between(0, chosen->second.used)}}}});
}

} // namespace

Phone& coordinator(World& world)
{
    for (int i = 0; i < 20; ++i)
        if (Phone& phone = world.anyPhone(); world.people[phone.person].role == "coordinator") return phone;
    return *world.phones[0];
}

// Lets in every stream that is known here and belongs to one of the people.
void enrolEverybody(World& world, Phone& phone)
{
    const auto roster = phone.store->rosterNow();
    const auto states = store::streamStates(*phone.reader);
    if (!roster || !states) broken("the roster cannot be read");
    const bool isRoot = roster->isRoot(phone.stream());
    if (!roster->isCoordinator(phone.stream())) return;
    // Whose last day is past says nothing that counts.
    const auto me = roster->members().find(phone.member(world));
    const bool hasEnded = me != roster->members().end() && me->second.until
        && dayOf(world.timeOf(phone), std::chrono::minutes(-300)) > *me->second.until;
    if (hasEnded && !isRoot) return;
    std::vector<Edit> edits;
    for (const auto& [stream, state] : *states) {
        const auto owner = world.owners.find(stream);
        if (owner == world.owners.end()) continue;
        const auto& [person, key] = owner->second;
        const bool isSecondRoot = person == 1;
        const bool isNew = !roster->isEnrolled(stream) || roster->memberOf(stream).isNil();
        // Only the founding stream names roots, not one that goes on from it.
        const bool isFounder = world.founders.contains(phone.stream());
        const bool lacksRoot = isSecondRoot && isFounder && !roster->isRoot(stream);
        if (!isNew && !lacksRoot) continue;
        if (world.people[person].role == "coordinator" && !isRoot) continue; // left to a root
        Edit edit{"device", deviceId(world.programme, stream), {},
            {{"stream", formatHex(stream)}, {"key", formatHex(key)},
                {"member", formatUuid(world.people[person].member)}}};
        if (lacksRoot) edit.fields["root"] = true;
        edits.push_back(edit);
    }
    if (!edits.empty()) {
        world.count("stream let in");
        keep(world, phone, edits);
    }
}

void stepEdit(World& world)
{
    editSomething(world, world.anyPhone());
}
void stepSettle(World& world)
{
    settle(world, world.random.percent(80) ? coordinator(world) : world.anyPhone());
}
void stepRule(World& world)
{
    rule(world, world.random.percent(85) ? coordinator(world) : world.anyPhone());
}
void stepAdmit(World& world)
{
    admit(world, world.random.percent(85) ? coordinator(world) : world.anyPhone());
}
void stepAssign(World& world)
{
    assign(world, world.random.percent(85) ? coordinator(world) : world.anyPhone());
}
void stepEnd(World& world)
{
    endDevice(world, coordinator(world));
}
void stepEnrol(World& world)
{
    enrolEverybody(world, coordinator(world));
}

} // namespace duskrow::sim
