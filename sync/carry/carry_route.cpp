// SPDX-License-Identifier: MIT
#include "sync/carry/carry_route.h"

#include <algorithm>

#include "store/photos.h"
#include "sync/carry/carried_writer.h"
#include "sync/exchange/intake.h"
#include "sync/exchange/segments_of_store.h"
#include "sync/folder/folder_files.h"

namespace duskrow::sync {

using namespace duskrow::domain;
namespace fs = std::filesystem;

namespace {

constexpr const char* route = "file";

fs::path photosOf(const store::Store& store)
{
    return fs::path(store::photoPath(store.path(), "x")).parent_path();
}

// Up to which number of each stream a member is known to have everything: what his own devices wrote, and
// what they cite.
Result<std::map<StreamId, std::int64_t>> knownTo(
    store::Store& store, store::Reader& reader, const Uuid& member)
{
    std::map<StreamId, std::int64_t> known;
    const auto roster = store.rosterNow();
    if (!roster) return roster.error();
    const auto rows = store::segmentRows(reader);
    if (!rows) return rows.error();
    for (const store::SegmentRow& row : *rows) {
        if (roster->memberOf(row.stream) != member) continue;
        std::int64_t& own = known[row.stream];
        own = std::max(own, row.last);
        const auto bytes = bytesOf(reader, row.id);
        if (!bytes) return bytes.error();
        const auto head =
            *bytes ? readHead(**bytes) : Result<SegmentHead>(Error{ErrorCode::SegmentUnfinished});
        if (!head) continue;
        for (const auto& [stream, seq] : head->header.cites) {
            std::int64_t& cited = known[stream];
            cited = std::max(cited, seq);
        }
    }
    return known;
}

} // namespace

Result<ExchangeReport> writeCarried(
    store::Store& store, const fs::path& path, const CarryWhat& what, Instant now, const Journey& journey)
{
    auto opened = store.reader();
    if (!opened) return opened.error();
    store::Reader& reader = **opened;
    if (const auto sealed = sealTail(store, reader); !sealed) return sealed.error();
    std::map<StreamId, std::int64_t> known;
    if (!what.forMember.isNil()) {
        auto found = knownTo(store, reader, what.forMember);
        if (!found) return found.error();
        known = std::move(*found);
    }
    const auto rows = store::segmentRows(reader);
    if (!rows) return rows.error();
    auto writer = CarriedWriter::open(path, store.programme());
    if (!writer) return writer.error();

    ExchangeReport report;
    std::vector<store::SegmentId> written;
    std::int64_t done = 0;
    for (const store::SegmentRow& row : *rows) {
        if (!goesOn(journey, done++, static_cast<std::int64_t>(rows->size()), report)) return report;
        const auto has = known.find(row.stream);
        if (!row.isWhole || (has != known.end() && has->second >= row.last)) continue;
        const auto bytes = bytesOf(reader, row.id);
        if (!bytes) return bytes.error();
        if (!*bytes) continue;
        if (const auto added = writer->add(ItemKind::Segment, **bytes); !added) return added.error();
        written.push_back(row.id);
        ++report.sent;
    }
    std::vector<fs::path> photos;
    eachEntry(photosOf(store), 200'000, [&](const fs::path& photo) { photos.push_back(photo); });
    std::sort(photos.begin(), photos.end());
    for (const fs::path& photo : photos) {
        const auto bytes = readPlainFile(photo, mostPhotographBytes);
        if (!bytes || formatHex(hashOf(*bytes)) != photo.filename().string()) continue;
        if (const auto added = writer->add(ItemKind::Photograph, *bytes); !added) return added.error();
        ++report.photosSent;
    }
    if (const auto finished = writer->finish(); !finished) return finished.error();
    if (const auto marked = store.markPassedOnNow(route, written, now); !marked) return marked.error();
    return report;
}

Result<CarriedPreview> previewCarried(store::Store& store, const fs::path& path)
{
    auto opened = store.reader();
    if (!opened) return opened.error();
    const auto states = store::streamStates(**opened);
    if (!states) return states.error();
    CarriedPreview preview;
    const auto report = readCarriedFile(path, [&](const CarriedItem& item) {
        if (item.kind == ItemKind::Photograph) {
            ++preview.photographs;
            return true;
        }
        auto head = readHead(item.bytes);
        if (!head) {
            ++preview.refused;
            return true;
        }
        const SegmentHeader& header = head->header;
        if (preview.programme.isNil()) preview.programme = header.programme;
        preview.changes += header.last - header.first + 1;
        const auto state = states->find(header.stream);
        const std::int64_t used = state == states->end() ? 0 : state->second.used;
        const std::int64_t added = header.last - std::max(header.first - 1, std::min(used, header.last));
        if (added > 0) preview.newFrom[header.stream] += added;
        preview.newChanges += added;
        return true;
    });
    if (!report) return report.error();
    if (report->ending == Ending::NotOurs) return Error{ErrorCode::CarriedNotOurs, {path.string()}};
    preview.ending = report->ending;
    return preview;
}

Result<ExchangeReport> readCarried(
    store::Store& store, const fs::path& path, Instant now, const Journey& journey)
{
    ExchangeReport report;
    std::optional<Error> failure;
    const std::string origin = path.string();
    Intake intake(store, now, report);
    const auto carried = readCarriedFile(path, [&](const CarriedItem& item) {
        if (!goesOn(journey, report.received, 0, report)) return false;
        if (item.kind == ItemKind::Segment) {
            const auto added = intake.add(item.bytes, origin);
            if (!added) failure = added.error();
            return added.has_value();
        }
        if (const auto taken = intake.finish(); !taken) {
            failure = taken.error();
            return false;
        }
        const std::string name = formatHex(hashOf(item.bytes));
        std::error_code ignored;
        if (fs::exists(photosOf(store) / name, ignored)) return true;
        const auto kept = handOver(photosOf(store) / name, item.bytes, store.stream());
        if (!kept) failure = kept.error();
        ++report.photosReceived;
        return kept.has_value();
    });
    const auto taken = intake.finish();
    if (failure) return *failure;
    if (!taken) return taken.error();
    if (!carried) return carried.error();
    if (carried->ending == Ending::NotOurs) return Error{ErrorCode::CarriedNotOurs, {origin}};
    if (carried->ending != Ending::Whole && !report.wasStopped)
        report.troubles.push_back({ErrorCode::CarriedCut, {origin}});
    return report;
}

} // namespace duskrow::sync
