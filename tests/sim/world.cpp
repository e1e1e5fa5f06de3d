// SPDX-License-Identifier: MIT
#include "sim/world.h"

#include <sodium.h>

#include "domain/records/roster.h"
#include "sim/clock.h"
#include "store/segments.h"

namespace duskrow::sim {

using namespace duskrow::domain;

namespace {

// What the code under test draws comes from the seed too.
Random* s_chance = nullptr;

std::uint32_t draw()
{
    return static_cast<std::uint32_t>(s_chance->next());
}

void drawBytes(void* to, std::size_t size)
{
    for (std::size_t i = 0; i < size; ++i)
        static_cast<std::uint8_t*>(to)[i] = static_cast<std::uint8_t>(s_chance->next());
}

const char* name()
{
    return "seeded";
}

randombytes_implementation s_seeded{name, draw, nullptr, nullptr, drawBytes, nullptr};

} // namespace

World::World(std::uint64_t number, fs::path where)
    : seed(number), random(number), root(std::move(where)), shared(root / "shared")
{
    // Its own beginning draws too, but only once in a process.
    if (sodium_init() < 0) broken("no sodium");
    s_chance = &random;
    randombytes_set_implementation(&s_seeded);
    Disk::instance().disarm();
    fs::remove_all(root);
    fs::create_directories(shared);
    programme = freshId();
    machineClock = toMs(now);
}

World::~World()
{
    Disk::instance().disarm();
    phones.clear();
    hub.reset();
    std::error_code ignored;
    fs::remove_all(root, ignored);
}

Uuid World::freshId()
{
    RandomBytes10 bytes{};
    for (std::uint8_t& byte : bytes) byte = static_cast<std::uint8_t>(random.next());
    return uuidFromTime(now, bytes);
}

void World::say(const std::string& what)
{
    trace += "\n  " + std::to_string(steps) + ": " + what;
    if (trace.size() > 4000) trace.erase(0, trace.find('\n', 1000));
}

namespace {

void addPeople(World& world)
{
    const std::size_t others = 2 + world.random.below(3);
    const std::vector<std::string> roles{
        "coordinator", "coordinator", "grower", "agronomist", "grower", "coordinator", "grower"};
    for (std::size_t i = 0; i <= others; ++i) {
        Person person;
        person.member = world.freshId();
        person.role = roles[i];
        person.invitation = world.freshId();
        std::array<std::uint8_t, 32> bytes{};
        drawBytes(bytes.data(), bytes.size());
        crypto_sign_seed_keypair(person.invitationKey.data(), person.invitationSecret.data(), bytes.data());
        world.people.push_back(person);
    }
}

void beginProgramme(World& world, Phone& founder)
{
    std::vector<Edit> edits{{"programme", world.programme, {}, {{"name", std::string("District")}}}};
    for (const Person& person : world.people)
        edits.push_back(
            {"member", person.member, {}, {{"name", std::string("Somebody")}, {"role", person.role}}});
    edits.push_back({"device", deviceId(world.programme, founder.stream()), {},
        {{"stream", formatHex(founder.stream())}, {"member", formatUuid(world.people[0].member)}}});
    for (std::size_t i = 1; i < world.people.size(); ++i)
        edits.push_back({"invitation", world.people[i].invitation, {},
            {{"member", formatUuid(world.people[i].member)},
                {"key", formatHex(world.people[i].invitationKey)},
                {"until_day", std::string("2026-12-31")}}});
    keep(world, founder, edits);
}

void claim(World& world, Phone& phone)
{
    const Person& person = world.people[phone.person];
    const std::string text = claimMessage(world.programme, phone.stream());
    Signature proof{};
    crypto_sign_detached(proof.data(), nullptr, reinterpret_cast<const unsigned char*>(text.data()),
        text.size(), person.invitationSecret.data());
    keep(world, phone,
        {{"device", deviceId(world.programme, phone.stream()), {},
            {{"stream", formatHex(phone.stream())}, {"key", formatHex(phone.store->publicKey())},
                {"label", std::string("a phone")}, {"invitation", formatUuid(person.invitation)},
                {"proof", formatHex(proof)}}}});
}

} // namespace

void World::begin()
{
    addPeople(*this);
    hub = std::make_unique<HubSide>(*this);
    for (std::size_t i = 0; i < people.size(); ++i) {
        phones.push_back(std::make_unique<Phone>());
        Phone& phone = *phones.back();
        phone.number = static_cast<int>(i);
        phone.person = i;
        phone.folder = root / ("phone" + std::to_string(i));
        phone.open(*this);
        if (i == 0) {
            founders = {phone.stream()};
            beginProgramme(*this, phone);
            hub->found(phone);
        } else
            claim(*this, phone);
    }
    // Some meet at once, some only later.
    for (auto& phone : phones)
        if (phone->number == 0 || random.percent(70)) exchangeFolder(*this, *phone);
    exchangeFolder(*this, *phones[0]);
    enrolEverybody(*this, *phones[0]);
    exchangeFolder(*this, *phones[0]);
    exchangeHub(*this, *phones[0], true);
}

void World::step()
{
    ++steps;
    now += std::chrono::milliseconds(random.between(1, 600'000));
    machineClock = toMs(now);
    unsigned all = 0;
    for (const Step& one : sim::steps()) all += one.weight;
    auto choice = static_cast<unsigned>(random.below(all));
    for (const Step& one : sim::steps()) {
        if (choice >= one.weight) {
            choice -= one.weight;
            continue;
        }
        say(one.name);
        try {
            one.run(*this);
        } catch (const Broken& what) {
            broken(std::string(one.name) + ": " + what.what());
        }
        return;
    }
}

void World::forgetWhatIsNowhere()
{
    Lines somewhere;
    std::set<std::string> seen = picturesInFolder(*this);
    const auto add = [&](const std::string& bytes) {
        const auto lines = linesIn(bytes, book);
        somewhere.insert(lines.begin(), lines.end());
    };
    for (const auto& phone : phones) {
        somewhere.insert(phone->expected.whole.begin(), phone->expected.whole.end());
        seen.insert(phone->expected.pictures.begin(), phone->expected.pictures.end());
    }
    // What was not put into its place yet is nobody's to read.
    for (const auto& entry : fs::recursive_directory_iterator(shared))
        if (entry.is_regular_file() && !entry.path().filename().string().starts_with(".t-"))
            add(bytesOfFile(entry.path()));
    for (const auto& [path, bytes] : stash) {
        add(bytes);
        const auto known = pictures.find(path.filename().string());
        if (known != pictures.end() && known->second == bytes) seen.insert(known->first);
    }
    somewhere.insert(hub->lines().begin(), hub->lines().end());
    seen.merge(hub->pictures());
    std::erase_if(mustLive, [&](int line) { return !somewhere.contains(line); });
    std::erase_if(mustSee, [&](const std::string& name) { return !seen.contains(name); });
}

// One of the two roots must stay one, or nobody can let anybody in any more.
bool World::isExpendable(const Phone& phone) const
{
    if (phone.person > 1) return true;
    const auto roster = phones[0]->store->rosterNow();
    if (!roster) return false;
    const bool isSecondReady = !isFounderLost && roster->isRoot(phones[1]->stream());
    const auto ofThese = std::count_if(
        phones.begin(), phones.end(), [&](const auto& one) { return one->person == phone.person; });
    // Whoever was copied may yet meet its double and begin anew.
    const bool isOtherSure = !phones[phone.person == 0 ? 1 : 0]->wasCopied;
    return isSecondReady && ofThese == 1 && isOtherSure;
}

std::string bytesOfFile(const fs::path& path)
{
    std::ifstream file(path, std::ios::binary | std::ios::ate);
    std::string bytes(file ? static_cast<std::size_t>(file.tellg()) : 0, '\0');
    file.seekg(0);
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    return bytes;
}

} // namespace duskrow::sim
