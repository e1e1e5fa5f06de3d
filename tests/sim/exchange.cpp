// SPDX-License-Identifier: MIT
// How phones meet: the folder, files in somebody's pocket, and segments handed over one by one.
#include <algorithm>

#include "sim/world.h"
#include "store/segments.h"
#include "sync/carry/carry_route.h"
#include "sync/exchange/intake.h"
#include "sync/exchange/segments_of_store.h"
#include "sync/folder/folder_files.h"
#include "sync/folder/folder_route.h"

namespace duskrow::sim {

using namespace duskrow::domain;

namespace {

// Everything of its own, once it may write, lies in the folder (I9): no bad item stood in the way.
void checkHandedOver(World& world, Phone& phone)
{
    const auto roster = phone.store->rosterNow();
    const auto rows = store::segmentRows(*phone.reader);
    if (!roster || !rows) broken("rows cannot be read");
    if (!roster->isEnrolled(phone.stream())) return;
    for (const store::SegmentRow& row : *rows) {
        if (!row.isWhole) continue;
        const fs::path path = sync::programmeFolder(world.shared, world.programme) / "s"
            / formatHex(row.stream) / sync::segmentName(row);
        if (!fs::exists(path)) broken("a segment did not get into the folder (I9)");
    }
    const auto tail = store::unsealedTail(*phone.reader, phone.stream(), 1);
    if (!tail || !tail->lines.empty()) broken("a tail was left unsealed (I9)");
}

} // namespace

bool exchangeFolder(World& world, Phone& phone)
{
    const auto report = sync::exchangeByFolder(*phone.store, world.shared, world.timeOf(phone));
    if (!report) {
        if (world.isFailing) return false;
        broken("phone " + std::to_string(phone.number) + " cannot exchange by the folder: "
            + std::to_string(static_cast<int>(report.error().code)) + " " + report.error().detail);
    }
    phone.mayRenew = phone.mayRenew || report->metFork;
    if (report->metFork) world.count("fork met");
    if (!world.isFailing) {
        if (world.random.percent(30)) checkHandedOver(world, phone);
        phone.audit(world, "the folder");
    }
    return report->changes + report->received + report->sent == 0;
}

void deliver(World& world, Phone& phone, const std::string& bytes)
{
    sync::ExchangeReport report;
    sync::Intake intake(*phone.store, world.timeOf(phone), report);
    auto taken = intake.add(bytes, "parcel");
    if (taken) taken = intake.finish();
    if (!taken && !world.isFailing) broken("a parcel is not taken in: " + taken.error().detail);
    phone.mayRenew = phone.mayRenew || report.metFork;
}

namespace {

std::string damaged(World& world, std::string bytes)
{
    Random& random = world.random;
    if (bytes.empty()) return bytes;
    switch (random.below(4)) {
    case 0:
        world.fault("cut");
        bytes.resize(random.below(bytes.size()));
        break;
    case 1:
        world.fault("bit flipped");
        bytes[random.below(bytes.size())] ^= static_cast<char>(1U << random.below(8));
        break;
    case 2: {
        world.fault("tail of zeros");
        const std::size_t from = random.below(bytes.size());
        std::fill(bytes.begin() + static_cast<std::ptrdiff_t>(from), bytes.end(), '\0');
        break;
    }
    default:
        world.fault("bytes appended");
        bytes += "more";
    }
    return bytes;
}

void seal(World& world, Phone& phone)
{
    const auto sealed = sync::sealTail(*phone.store, *phone.reader);
    if (!sealed && !world.isFailing)
        broken("phone " + std::to_string(phone.number)
            + " cannot seal: " + std::to_string(static_cast<int>(sealed.error().code))
            + (sealed.error().args.empty() ? "" : " " + sealed.error().args.front()) + sealed.error().detail);
}

} // namespace

void stepFolder(World& world)
{
    Phone& phone = world.anyPhone();
    exchangeFolder(world, phone);
    // The app begins anew when the store met its double.
    if (phone.mayRenew && world.random.percent(50)) {
        phone.close();
        phone.open(world);
        phone.audit(world, "a fork");
    }
}

void stepHub(World& world)
{
    Phone& phone = world.anyPhone();
    const bool isLinkGood = world.random.percent(60);
    if (world.random.percent(60))
        visitHub(world, phone, isLinkGood);
    else
        exchangeHub(world, phone, isLinkGood);
    phone.audit(world, "the hub");
}

// Some segments of one phone, each with its own fate on the way to another.
void stepSend(World& world)
{
    Phone& from = world.anyPhone();
    seal(world, from);
    const auto rows = store::segmentRows(*from.reader);
    if (!rows) broken("rows cannot be read");
    Random& random = world.random;
    const std::size_t to = random.below(world.phones.size());
    for (const store::SegmentRow& row : *rows) {
        if (random.percent(70)) continue;
        const auto bytes = sync::bytesOf(*from.reader, row.id);
        if (!bytes || !*bytes) broken("a segment has no bytes");
        if (random.percent(10)) {
            world.fault("dropped");
            continue;
        }
        const int copies = random.percent(15) ? 2 : 1;
        if (copies == 2) world.fault("duplicated");
        for (int i = 0; i < copies; ++i) {
            const bool isDamaged = random.percent(8);
            world.parcels.push_back(
                {to, isDamaged ? damaged(world, **bytes) : **bytes, static_cast<int>(random.below(30))});
        }
    }
}

void stepDeliver(World& world)
{
    std::vector<std::size_t> touched;
    std::vector<Parcel> later;
    // Out of order.
    for (std::size_t i = world.parcels.size(); i > 1; --i)
        std::swap(world.parcels[i - 1], world.parcels[world.random.below(i)]);
    if (world.parcels.size() > 1) world.fault("reordered");
    for (Parcel& parcel : world.parcels) {
        if (--parcel.wait > 0 || world.random.percent(40)) {
            later.push_back(std::move(parcel));
            continue;
        }
        deliver(world, *world.phones[parcel.to], parcel.bytes);
        touched.push_back(parcel.to);
    }
    if (later.size() > 40) later.resize(40);
    world.parcels = std::move(later);
    std::sort(touched.begin(), touched.end());
    touched.erase(std::unique(touched.begin(), touched.end()), touched.end());
    for (const std::size_t one : touched) world.phones[one]->audit(world, "parcels");
}

void stepCarry(World& world)
{
    Random& random = world.random;
    Phone& from = world.anyPhone();
    Phone& to = world.anyPhone();
    const fs::path file = world.root / "carried.dusk";
    sync::CarryWhat what;
    if (random.percent(40)) what.forMember = to.member(world);
    const auto written = sync::writeCarried(*from.store, file, what, world.timeOf(from));
    if (!written)
        broken("a carried file is not written: " + std::to_string(static_cast<int>(written.error().code)));
    from.audit(world, "writing a carried file");
    if (random.percent(25)) {
        const std::string bytes = damaged(world, bytesOfFile(file));
        std::ofstream(file, std::ios::binary | std::ios::trunc) << bytes;
    }
    const auto preview = sync::previewCarried(*to.store, file);
    const auto read = sync::readCarried(*to.store, file, world.timeOf(to));
    if (!read && read.error().code != ErrorCode::CarriedNotOurs)
        broken("a carried file is not read: " + std::to_string(static_cast<int>(read.error().code)));
    if (preview.has_value() != read.has_value()) broken("a carried file is shown and read otherwise");
    if (read) to.mayRenew = to.mayRenew || read->metFork;
    to.audit(world, "reading a carried file");
    fs::remove(file);
}

namespace {

std::vector<fs::path> filesInFolder(const World& world)
{
    std::vector<fs::path> files;
    for (const auto& entry : fs::recursive_directory_iterator(world.shared))
        if (entry.is_regular_file() && entry.path().extension() != ".txt") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

} // namespace

// A file is damaged where it lies, or has not been copied to its end yet; the good one may come later.
void stepDamage(World& world)
{
    const auto files = filesInFolder(world);
    if (files.empty()) return;
    const fs::path file = files[world.random.below(files.size())];
    const std::string bytes = bytesOfFile(file);
    world.stash.emplace(file, bytes);
    if (world.random.percent(15)) {
        world.fault("file removed");
        fs::remove(file);
        return;
    }
    std::ofstream(file, std::ios::binary | std::ios::trunc) << damaged(world, bytes);
}

void stepMendFolder(World& world)
{
    if (world.stash.empty()) return;
    auto chosen = world.stash.begin();
    std::advance(chosen, static_cast<std::ptrdiff_t>(world.random.below(world.stash.size())));
    std::ofstream(chosen->first, std::ios::binary | std::ios::trunc) << chosen->second;
    world.stash.erase(chosen);
}

// What services that keep folders equal leave behind.
void stepConflictCopy(World& world)
{
    const auto files = filesInFolder(world);
    if (files.empty()) return;
    const fs::path file = files[world.random.below(files.size())];
    static const std::vector<std::string> marks{
        " (1)", ".sync-conflict-20260601-101500-ABCDEFG", " (conflicted copy 2026-06-01)", " - Copy", "~"};
    const fs::path copy =
        file.parent_path() / (file.stem().string() + world.random.of(marks) + file.extension().string());
    fs::copy_file(file, copy, fs::copy_options::overwrite_existing);
    world.fault("conflict copy");
    if (world.random.percent(30)) {
        std::ofstream(file.parent_path() / ("junk" + std::to_string(world.random.below(5)))) << "not ours";
        world.fault("foreign file");
    }
}

} // namespace duskrow::sim
