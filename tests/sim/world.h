// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <fstream>

#include "sim/disk.h"
#include "sim/hub_side.h"
#include "sim/phone.h"
#include "sim/stranger.h"

namespace duskrow::sim {

namespace fs = std::filesystem;

struct Person {
    domain::Uuid member;
    std::string role;
    std::array<std::uint8_t, 64> invitationSecret{};
    domain::PublicKey invitationKey{};
    domain::Uuid invitation;
};

// Something under way from one phone to another: bytes that claim to be a segment.
struct Parcel {
    std::size_t to = 0;
    std::string bytes;
    int wait = 0; // steps until it may come
};

// A code given out while everything is under way.
struct Invitation {
    std::size_t person = 0;
    Uuid id;
    std::array<std::uint8_t, 64> secret{};
};

// A site or trap that people write about.
struct Place {
    domain::Uuid site;
    domain::Uuid trap; // nil: of the site only
};

struct Loan {
    Uuid record;
    Place place;
    std::size_t person = 0;
    std::optional<domain::LocalDay> until; // as it was said last
};

// Everything that one seed drives: clock, chance, files and transport.
struct World {
    World(std::uint64_t seed, fs::path where);
    ~World();
    World(const World&) = delete;
    World& operator=(const World&) = delete;

    void begin(); // programme, people, phones, hub
    void step();
    void finish(); // heals every link, exchanges until nothing moves, checks everything

    void fault(const std::string& name) { ++faults[name]; }
    void count(const std::string& what, long several = 1) { counts[what] += several; }
    domain::Instant timeOf(const Phone& phone) const { return now + phone.clockError; }
    domain::Uuid freshId();
    Phone& anyPhone() { return *random.of(phones); }
    void say(const std::string& what);
    // What is nowhere any more, now that a phone or the hub was put back, is no longer expected.
    void forgetWhatIsNowhere();
    [[nodiscard]] bool isExpendable(const Phone& phone) const; // losing its stream leaves a root

    std::uint64_t seed;
    Random random;
    fs::path root;
    fs::path shared; // the folder that all phones see
    Book book;
    domain::Uuid programme;
    std::set<StreamId> founders;
    domain::Instant now = domain::instantFromMs(1'780'000'000'000);
    std::vector<Person> people;
    std::vector<std::unique_ptr<Phone>> phones;
    std::map<StreamId, std::pair<std::size_t, domain::PublicKey>> owners; // person and key of each stream
    std::vector<std::unique_ptr<Stranger>> strangers;
    std::unique_ptr<HubSide> hub;
    std::vector<Parcel> parcels;
    std::vector<Place> places;
    std::map<fs::path, std::string> stash; // files in the folder as they were before they were damaged
    Lines mustLive; // called saved, and not lost with a phone
    std::map<std::string, std::string> pictures; // every photograph ever taken: its bytes by its name
    std::set<std::string> mustSee; // of those, the ones of kept records that were not lost with a phone
    std::vector<Invitation> invitations;
    std::vector<Loan> loans;
    int claimants = 0;
    std::map<std::string, long> faults; // injected
    std::map<std::string, long> counts; // what came of them
    std::string trace; // the last steps
    std::string unrest; // what moved in the last round of healing
    bool isFailing = false; // a fault is armed: errors are no surprise
    bool isFounderLost = false;
    int steps = 0;
};

std::string bytesOfFile(const fs::path& path);

// A step, how often it comes, and what it is called when it breaks something.
struct Step {
    const char* name;
    unsigned weight;
    void (*run)(World&);
};
const std::vector<Step>& steps();

// What people do.
void keep(World& world, Phone& phone, std::vector<domain::Edit> edits);
void editSomething(World& world, Phone& phone);
void enrolEverybody(World& world, Phone& phone);
// Ways of exchange; false when it stopped early.
bool exchangeFolder(World& world, Phone& phone);
bool exchangeHub(World& world, Phone& phone, bool isLinkGood);
bool visitHub(World& world, Phone& phone, bool isLinkGood); // by the client of the product
void deliver(World& world, Phone& phone, const std::string& bytes);
Phone& coordinator(World& world);
std::optional<Place> borrowed(World& world, const Phone& phone);
Change strangeChange(World& world);

// Photographs.
std::string takePicture(World& world, Phone& phone); // its name; empty when the disk refused
std::set<std::string> picturesBeside(const World& world, const Phone& phone);
std::set<std::string> picturesIn(const World& world, const fs::path& folder); // sound ones
std::set<std::string> picturesInFolder(const World& world);
void checkPictures(World& world, const Lines& stray);

} // namespace duskrow::sim
