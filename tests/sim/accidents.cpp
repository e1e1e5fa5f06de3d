// SPDX-License-Identifier: MIT
// What happens to phones and to the hub.
#include "sim/world.h"
#include "store/segments.h"

namespace duskrow::sim {

using namespace duskrow::domain;

namespace {

// Whatever a phone does.
void doSomething(World& world, Phone& phone)
{
    const auto what = world.random.below(10);
    if (what < 4) return editSomething(world, phone);
    if (what < 7) {
        exchangeFolder(world, phone);
        return;
    }
    if (what < 9) {
        exchangeHub(world, phone, true);
        return;
    }
    for (const Parcel& parcel : world.parcels)
        if (&phone == world.phones[parcel.to].get()) deliver(world, phone, parcel.bytes);
}

} // namespace

// The program ends, or the power goes, between any two effects on the disk.
void stepCrash(World& world)
{
    Phone& phone = world.anyPhone();
    const bool isPower = world.random.percent(60);
    const long at = static_cast<long>(world.random.below(world.random.percent(50) ? 12 : 70));
    Disk::instance().arm({(phone.folder / "live").string(), world.shared.string()}, at,
        isPower ? Fault::PowerCut : Fault::Kill);
    world.isFailing = true;
    const int acts = 1 + static_cast<int>(world.random.below(3));
    for (int i = 0; i < acts; ++i) doSomething(world, phone);
    phone.close();
    world.isFailing = false;
    if (Disk::instance().disarm()) world.count(isPower ? "power cut" : "killed");
    if (isPower) Disk::instance().losePower(world.random);
    phone.open(world);
    phone.audit(world, "a crash", true);
}

// One effect fails, or there is no room; the app goes on.
void stepDiskTrouble(World& world)
{
    Phone& phone = world.anyPhone();
    const bool isFull = world.random.percent(50);
    const long at = static_cast<long>(world.random.below(30));
    Disk::instance().arm(
        {(phone.folder / "live").string(), world.shared.string()}, at, isFull ? Fault::Full : Fault::Once);
    world.isFailing = true;
    const int acts = 1 + static_cast<int>(world.random.below(3));
    for (int i = 0; i < acts; ++i) doSomething(world, phone);
    world.isFailing = false;
    if (Disk::instance().disarm()) world.count(isFull ? "disk full" : "disk error");
    if (world.random.percent(40)) {
        phone.close();
        phone.open(world);
    }
    phone.audit(world, "trouble with the disk", true);
}

void stepReopen(World& world)
{
    Phone& phone = world.anyPhone();
    phone.close();
    phone.open(world);
    phone.audit(world, "opening again");
}

void stepBackup(World& world)
{
    Phone& phone = world.anyPhone();
    phone.close();
    fs::remove_all(phone.folder / "backup");
    fs::copy(phone.folder / "live", phone.folder / "backup", fs::copy_options::recursive);
    phone.open(world);
    phone.backup = Phone::Backup{phone.expected};
}

namespace {

bool isSameAct(const Change& a, const Change& b)
{
    if (a.record != b.record || a.kind != b.kind || a.at != b.at || a.fields.size() != b.fields.size())
        return false;
    for (const auto& [name, set] : a.fields)
        if (!b.fields.contains(name) || b.fields.at(name).value != set.value) return false;
    return true;
}

// What nobody can sign any more is there again as changes of the new stream.
void expectAdopted(World& world, Phone& phone)
{
    const Held found = heldBy(*phone.reader, world.book, phone.stream(), true);
    Lines gone;
    for (const int line : phone.expected.used)
        if (!found.used.contains(line)) gone.insert(line);
    for (const int line : gone) {
        bool isThere = false;
        for (const int other : found.used)
            if (world.book.at(other).ref.stream == phone.stream()
                && isSameAct(world.book.at(line), world.book.at(other))) {
                isThere = true;
                world.mustLive.insert(other);
            }
        if (!isThere) broken("a change is lost with its key: " + canonicalJson(world.book.at(line)));
        phone.expected.used.erase(line);
        world.count("adopted");
    }
    world.forgetWhatOnlyHas(phone, found);
}

} // namespace

// An old copy of the store takes its place: with the key of today, with the key of then, or with none.
void stepRestore(World& world)
{
    Phone& phone = world.anyPhone();
    if (!phone.backup || !world.isExpendable(phone)) return;
    world.forgetWhatOnlyHas(phone, phone.backup->held);
    if (phone.person == 0) world.isFounderLost = true;
    phone.close();
    const auto keys = world.random.below(3);
    const fs::path live = phone.folder / "live";
    const fs::path kept = phone.folder / "keys-of-today";
    fs::remove_all(kept);
    fs::copy(live / "keys", kept);
    fs::remove_all(live);
    fs::copy(phone.folder / "backup", live, fs::copy_options::recursive);
    if (keys != 1) fs::remove_all(live / "keys");
    if (keys == 0) fs::copy(kept, live / "keys");
    world.count(keys == 0 ? "restored, key of today"
            : keys == 1   ? "restored, key of then"
                          : "restored, no key");
    phone.expected = phone.backup->held;
    phone.mayRenew = phone.wasCopied = true;
    phone.open(world);
    if (keys == 2) expectAdopted(world, phone);
    phone.audit(world, "a restore", true);
}

// The whole installation is copied to a second phone; both go on.
void stepClone(World& world)
{
    Phone& phone = world.anyPhone();
    if (world.phones.size() > world.people.size() + 1 || !world.isExpendable(phone)) return;
    if (phone.person == 0) world.isFounderLost = true;
    phone.close();
    auto twin = std::make_unique<Phone>();
    twin->number = static_cast<int>(world.phones.size());
    twin->person = phone.person;
    twin->folder = world.root / ("phone" + std::to_string(twin->number));
    fs::create_directories(twin->folder);
    fs::copy(phone.folder / "live", twin->folder / "live", fs::copy_options::recursive);
    twin->expected = phone.expected;
    twin->lastKey = phone.lastKey;
    twin->hub = phone.hub;
    twin->clockError = phone.clockError;
    twin->mayRenew = twin->wasCopied = true;
    phone.mayRenew = phone.wasCopied = true;
    phone.open(world);
    twin->open(world);
    twin->audit(world, "cloning");
    world.phones.push_back(std::move(twin));
    world.count("cloned");
}

void stepClock(World& world)
{
    static constexpr std::int64_t day = 86'400'000;
    static const std::vector<std::int64_t> jumps{
        0, day, -day, 365 * day, -365 * day, 3'600'000, -20'000 * day};
    world.anyPhone().clockError = std::chrono::milliseconds(world.random.of(jumps));
    world.count("clock jumped");
}

void stepHubAccident(World& world)
{
    Random& random = world.random;
    HubSide& hub = *world.hub;
    switch (random.below(5)) {
    case 0:
        hub.close();
        hub.open();
        world.count("hub restarted");
        break;
    case 1:
        hub.copy();
        break;
    case 2:
        if (hub.hasCopy() && random.percent(50)) {
            hub.putBack();
            world.count("hub restored");
        }
        break;
    default: {
        const bool isPower = random.percent(60);
        Phone& phone = world.anyPhone();
        Disk::instance().arm({(hub.folder() / "live").string()}, static_cast<long>(random.below(30)),
            isPower ? Fault::PowerCut : Fault::Full);
        world.isFailing = true;
        exchangeHub(world, phone, true);
        if (isPower) hub.close();
        world.isFailing = false;
        if (Disk::instance().disarm()) world.count(isPower ? "hub lost power" : "hub's disk full");
        if (isPower) Disk::instance().losePower(random);
        if (isPower) hub.open();
        phone.audit(world, "a hub in trouble");
        hub.audit();
    }
    }
}

namespace {

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

} // namespace

// Devices of a newer version, of nobody, and of somebody who lies.
void stepStranger(World& world)
{
    Random& random = world.random;
    if (world.strangers.size() < 3 && random.percent(20)) {
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
    world.count("strange change");
    std::string bytes = one.seal(world.book, random.percent(15) ? "holograms" : "");
    if (random.percent(10)) {
        bytes = one.sealAgain(world.book, strangeChange(world));
        world.count("equivocation");
    } else if (random.percent(15)) {
        const Stranger other(world.programme, random.next());
        bytes = other.forge(bytes);
        world.count("forged");
    }
    if (bytes.empty()) return;
    Phone& phone = world.anyPhone();
    deliver(world, phone, bytes);
    phone.audit(world, "a stranger");
}

} // namespace duskrow::sim
