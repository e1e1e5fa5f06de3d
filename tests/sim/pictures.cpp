// SPDX-License-Identifier: MIT
// Photographs: taken, kept beside the store, and looked for everywhere.
#include <algorithm>
#include <sodium.h>

#include "sim/world.h"
#include "store/photos.h"
#include "store/segments.h"

namespace duskrow::sim {

using namespace duskrow::domain;

namespace {

// FORMAT.md section 1: BLAKE2b of 32 bytes, in hex.
std::string nameOf(const std::string& bytes)
{
    std::array<std::uint8_t, 32> hash{};
    crypto_generichash(hash.data(), hash.size(), reinterpret_cast<const unsigned char*>(bytes.data()),
        bytes.size(), nullptr, 0);
    return formatHex(hash);
}

bool isName(const std::string& name)
{
    std::array<std::uint8_t, 32> hash{};
    return parseHex(name, hash);
}

} // namespace

std::string takePicture(World& world, Phone& phone)
{
    std::string bytes(20 + world.random.below(3000), '\0');
    for (char& byte : bytes) byte = static_cast<char>(world.random.next());
    const std::string name = nameOf(bytes);
    world.pictures[name] = bytes;
    const fs::path camera = world.root / "camera.jpg";
    std::ofstream(camera, std::ios::binary | std::ios::trunc) << bytes;
    const auto kept = store::keepPhoto(phone.path(), camera.string());
    if (!kept && world.isFailing) return {};
    if (!kept) broken("a photograph cannot be kept: " + kept.error().detail);
    if (*kept != name) broken("a photograph is kept under the name " + *kept + ", not " + name);
    phone.expected.pictures.insert(name);
    world.count("photographs taken");
    return name;
}

std::set<std::string> picturesIn(const World& world, const fs::path& folder)
{
    std::set<std::string> names;
    std::error_code failure;
    for (fs::directory_iterator entry(folder, failure); !failure && entry != fs::directory_iterator();
         entry.increment(failure)) {
        const std::string name = entry->path().filename().string();
        if (!isName(name)) continue;
        const auto known = world.pictures.find(name);
        if (known != world.pictures.end() && bytesOfFile(entry->path()) == known->second) names.insert(name);
    }
    return names;
}

std::set<std::string> picturesBeside(const World& world, const Phone& phone)
{
    const fs::path folder = fs::path(phone.path() + ".d") / "photos";
    const std::set<std::string> sound = picturesIn(world, folder);
    std::error_code failure;
    for (fs::directory_iterator entry(folder, failure); !failure && entry != fs::directory_iterator();
         entry.increment(failure)) {
        const std::string name = entry->path().filename().string();
        // A damaged file that was carried here may bring a picture that nobody took, under its own name.
        if (isName(name) && !sound.contains(name) && nameOf(bytesOfFile(entry->path())) != name)
            broken("phone " + std::to_string(phone.number)
                + " keeps a photograph that is not what its name says");
    }
    return sound;
}

std::set<std::string> picturesInFolder(const World& world)
{
    return picturesIn(world, world.shared / "duskrow" / formatUuid(world.programme) / "p");
}

namespace {

bool isShown(Phone& phone, const std::string& name)
{
    const auto shown = store::photosNamed(*phone.reader);
    if (!shown) broken("nobody knows which photographs are shown");
    return std::find(shown->begin(), shown->end(), name) != shown->end();
}

// Lies on a phone, or a record of one shows it.
bool isKnownTo(Phone& phone, const std::string& name)
{
    return phone.expected.pictures.contains(name) || isShown(phone, name);
}

bool isPassedOn(const World& world, const std::string& name, const Lines& stray)
{
    const Lines& used = world.phones[0]->expected.used;
    return std::any_of(used.begin(), used.end(), [&](int line) {
        return !stray.contains(line) && canonicalJson(world.book.at(line)).find(name) != std::string::npos;
    });
}

} // namespace

// Everybody has every photograph of which the record was kept, and the hub those that a record shows. From
// the hub nobody fetches what no record shows; whoever lets the record in will.
//
// stray  changes that nobody can pass on any more: the hub takes no photograph that they alone show
void checkPictures(World& world, const Lines& stray)
{
    const std::set<std::string> atHub = world.hub->pictures();
    const std::set<std::string> inFolder = picturesInFolder(world);
    for (const std::string& name : world.mustSee) {
        if (isShown(*world.phones[0], name) && !atHub.contains(name) && isPassedOn(world, name, stray))
            broken("the hub lacks the photograph " + name + " (I3)");
        const bool isKnown = inFolder.contains(name)
            || std::any_of(world.phones.begin(), world.phones.end(),
                [&](const auto& phone) { return isKnownTo(*phone, name); });
        if (!isKnown && atHub.contains(name)) {
            world.count("photographs of records kept aside, at the hub alone");
            continue;
        }
        for (const auto& phone : world.phones)
            if (!phone->expected.pictures.contains(name))
                broken("phone " + std::to_string(phone->number) + " lacks the photograph " + name + " (I3)");
        if (!inFolder.contains(name)) broken("the folder lacks the photograph " + name + " (I3)");
    }
    world.count("photographs found everywhere in the end", static_cast<long>(world.mustSee.size()));
}

} // namespace duskrow::sim
