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
        if (world.random.percent(50))
            visitHub(world, phone, true);
        else
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
    if (Disk::instance().disarm()) world.fault(isPower ? "power cut" : "killed");
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
    if (Disk::instance().disarm()) world.fault(isFull ? "disk full" : "disk error");
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
    constexpr std::size_t most = 3;
    if (phone.backups.size() == most) {
        fs::remove_all(phone.backups.front().folder);
        phone.backups.erase(phone.backups.begin());
    }
    phone.close();
    const fs::path folder = phone.folder / ("backup" + std::to_string(world.steps));
    fs::copy(phone.folder / "live", folder, fs::copy_options::recursive);
    phone.backups.push_back({folder, phone.expected});
    phone.open(world); // which may begin a new stream
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
    Held found = heldBy(*phone.reader, world.book, phone.streams, true);
    found.pictures = phone.expected.pictures;
    Lines gone;
    for (const int line : phone.expected.used)
        if (!found.used.contains(line)) gone.insert(line);
    std::set<StreamId> keys{phone.stream()};
    for (const store::StreamKey& key : phone.store->formerKeys()) keys.insert(key.stream);
    for (const int line : gone) {
        if (keys.contains(world.book.at(line).ref.stream))
            broken("a change is lost though its key is there: " + canonicalJson(world.book.at(line)));
        bool isThere = false;
        for (const int other : found.used)
            if (world.book.at(other).ref.stream == phone.stream()
                && isSameAct(world.book.at(line), world.book.at(other))) {
                isThere = true;
                world.mustLive.insert(other);
            }
        if (!isThere) broken("a change is lost with its key: " + canonicalJson(world.book.at(line)));
        phone.expected.used.erase(line);
        world.count("changes written again, their key being gone");
    }
    phone.expected = found;
    world.forgetWhatIsNowhere();
}

// An old copy of the store takes its place: with the key of today, with the key of then, or with none.
void putBack(World& world, Phone& phone)
{
    const auto age = world.random.below(phone.backups.size());
    const Phone::Backup backup = phone.backups[age];
    world.fault(age + 1 == phone.backups.size() ? "phone restored from its newest copy"
                                                : "phone restored from an older copy");
    phone.expected = backup.held;
    world.forgetWhatIsNowhere();
    if (phone.person == 0) world.isFounderLost = true;
    phone.close();
    const auto keys = world.random.below(3);
    const fs::path live = phone.folder / "live";
    const fs::path kept = phone.folder / "keys-of-today";
    fs::remove_all(kept);
    fs::copy(live / "keys", kept);
    fs::remove_all(live);
    fs::copy(backup.folder, live, fs::copy_options::recursive);
    if (keys != 1) fs::remove_all(live / "keys");
    if (keys == 0) fs::copy(kept, live / "keys");
    world.fault(keys == 0 ? "restored with the key of today"
            : keys == 1   ? "restored with the key of then"
                          : "restored without a key");
    phone.mayRenew = phone.wasCopied = true;
    phone.open(world);
    // With the key of today too, when that of the copy was lost at an earlier restore.
    if (keys != 1) expectAdopted(world, phone);
    phone.audit(world, "a restore", true);
}

} // namespace

void stepRestore(World& world)
{
    Phone& phone = world.anyPhone();
    if (!phone.backups.empty() && world.isExpendable(phone)) putBack(world, phone);
}

// After a fire: the hub and a phone come back from what was copied, whatever ages that has.
void stepRestoreBoth(World& world)
{
    Phone& phone = world.anyPhone();
    if (phone.backups.empty() || !world.hub->hasCopy() || !world.isExpendable(phone)) return;
    world.fault("hub and phone restored together");
    world.hub->putBack();
    putBack(world, phone);
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
    twin->streams = phone.streams;
    twin->hub = phone.hub;
    twin->clockError = phone.clockError;
    twin->mayRenew = twin->wasCopied = true;
    phone.mayRenew = phone.wasCopied = true;
    phone.open(world);
    twin->open(world);
    twin->audit(world, "cloning");
    world.phones.push_back(std::move(twin));
    world.fault("cloned");
}

void stepClock(World& world)
{
    static constexpr std::int64_t day = 86'400'000;
    static const std::vector<std::int64_t> jumps{
        0, day, -day, 365 * day, -365 * day, 3'600'000, -20'000 * day};
    world.anyPhone().clockError = std::chrono::milliseconds(world.random.of(jumps));
    world.fault("clock jumped");
}

void stepHubAccident(World& world)
{
    Random& random = world.random;
    HubSide& hub = *world.hub;
    switch (random.below(5)) {
    case 0:
        hub.close();
        hub.open();
        world.fault("hub restarted");
        break;
    case 1:
        hub.copy();
        break;
    case 2:
        if (hub.hasCopy()) hub.putBack();
        break;
    default: {
        const bool isPower = random.percent(60);
        Phone& phone = world.anyPhone();
        Disk::instance().arm({(hub.folder() / "live").string()}, static_cast<long>(random.below(30)),
            isPower ? Fault::PowerCut : Fault::Full);
        world.isFailing = true;
        if (random.percent(50))
            visitHub(world, phone, true);
        else
            exchangeHub(world, phone, true);
        if (isPower) hub.close();
        world.isFailing = false;
        if (Disk::instance().disarm()) world.fault(isPower ? "hub lost power" : "hub's disk full");
        if (isPower) Disk::instance().losePower(random);
        if (isPower) hub.open();
        phone.audit(world, "a hub in trouble");
        hub.audit();
    }
    }
}

} // namespace duskrow::sim
