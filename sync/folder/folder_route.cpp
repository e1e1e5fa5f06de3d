// SPDX-License-Identifier: MIT
#include "sync/folder/folder_route.h"

#include <algorithm>
#include <set>

#include "store/photos.h"
#include "sync/exchange/intake.h"
#include "sync/exchange/segments_of_store.h"
#include "sync/folder/folder_files.h"
#include "sync/segment/layout.h"

namespace duskrow::sync {

using namespace duskrow::domain;
namespace fs = std::filesystem;

namespace {

constexpr std::size_t mostEntries = 200'000;
constexpr std::size_t mostPhotoBytes = std::size_t{32} << 20;
constexpr std::string_view readme =
    "This folder is how devices of a trapping programme exchange their records with Duskrow.\n"
    "Everybody who can open it can read them. Please rename or remove nothing here.\n";

// One exchange with one folder.
class FolderVisit {
public:
    FolderVisit(
        store::Store& store, store::Reader& reader, fs::path shared, Instant now, const Journey& journey)
        : m_store(store), m_reader(reader), m_shared(std::move(shared)),
          m_home(programmeFolder(m_shared, store.programme())), m_now(now), m_journey(journey)
    {
    }

    Result<ExchangeReport> run()
    {
        if (const auto sealed = sealTail(m_store, m_reader); !sealed) return sealed.error();
        removeOwnLeftovers();
        // What is there comes first: a segment that others relayed need not be written again.
        if (const auto taken = takeAll(); !taken) return taken.error();
        if (const auto handed = handOverAll(); !handed) return handed.error();
        if (const auto photos = exchangePhotos(); !photos) return photos.error();
        return m_report;
    }

private:
    void removeOwnLeftovers() const
    {
        const std::string own = ".t-" + formatHex(m_store.stream()).substr(0, 16) + '-';
        std::vector<fs::path> leftovers;
        eachEntry(m_home, mostEntries, [&](const fs::path& path) {
            if (path.filename().string().starts_with(own)) leftovers.push_back(path);
        });
        std::error_code ignored;
        for (const fs::path& path : leftovers) fs::remove(path, ignored);
    }

    // The names under which the segments of this store lie or would lie.
    Result<std::map<std::string, store::SegmentRow>> ownNames()
    {
        auto rows = store::segmentRows(m_reader);
        if (!rows) return rows.error();
        std::map<std::string, store::SegmentRow> names;
        for (store::SegmentRow& row : *rows)
            names.emplace(formatHex(row.stream) + '/' + segmentName(row), row);
        return names;
    }

    Result<Done> takeAll()
    {
        const auto known = ownNames();
        if (!known) return known.error();
        std::vector<fs::path> files;
        const auto wants = [&](const fs::path& path) {
            const std::string name = path.filename().string();
            if (name.starts_with(".t-") || path.extension() == ".txt") return;
            const auto found = known->find(path.parent_path().filename().string() + '/' + name);
            if (found == known->end() || !found->second.isWhole) files.push_back(path);
            if (found != known->end() && isThere(path, fileSizeOf(found->second)))
                m_there.insert(found->first);
        };
        const bool isAll =
            eachEntry(m_home / "s", mostEntries, wants) && eachEntry(m_home / "join", mostEntries, wants);
        if (!isAll) m_report.troubles.push_back({ErrorCode::FolderTooFull, {m_home.string()}});
        std::sort(files.begin(), files.end());
        Intake intake(m_store, m_now, m_report);
        for (std::size_t i = 0; i < files.size(); ++i) {
            if (!goesOn(m_journey, static_cast<std::int64_t>(i), static_cast<std::int64_t>(files.size()),
                    m_report))
                break;
            const auto bytes = readPlainFile(files[i], mostSegmentBytes);
            if (!bytes || !looksOurs(*bytes)) continue;
            if (const auto added = intake.add(*bytes, files[i].string()); !added) return added.error();
        }
        return intake.finish();
    }

    static std::size_t fileSizeOf(const store::SegmentRow& row)
    {
        return leastSegmentBytes + static_cast<std::size_t>(row.size);
    }

    // Files of others in this folder are not ours to judge; one that is cut right in the magic may be ours
    // still.
    static bool looksOurs(std::string_view bytes)
    {
        constexpr std::string_view magic = "DSEG1\n";
        return bytes.substr(0, magic.size()) == magic.substr(0, bytes.size());
    }

    Result<Done> handOverAll()
    {
        if (m_report.wasStopped) return Done{};
        const auto names = ownNames();
        if (!names) return names.error();
        const auto roster = m_store.rosterNow();
        if (!roster) return roster.error();
        const bool mayWrite = roster->isEnrolled(m_store.stream());
        writeReadme();
        std::vector<store::SegmentId> done;
        std::optional<Error> failed;
        std::int64_t at = 0;
        for (const auto& [name, row] : *names) {
            const bool isOwn = row.stream == m_store.stream();
            if (!row.isWhole || (isOwn && !mayWrite && row.first != 1)) continue;
            if (!goesOn(m_journey, ++at, static_cast<std::int64_t>(names->size()), m_report)) break;
            if (m_there.contains(name)) {
                done.push_back(row.id);
                continue;
            }
            // Whom the roster does not know yet may only ask to be let in.
            const bool asks = isOwn && !mayWrite;
            const fs::path path =
                asks ? m_home / "join" / (formatHex(row.id).substr(0, 16) + ".req") : m_home / "s" / name;
            const auto bytes = bytesOf(m_reader, row.id);
            if (!bytes) return bytes.error();
            if (!*bytes) continue;
            if (const auto handed = handOver(path, **bytes, m_store.stream()); !handed) {
                // One place that is taken by something else keeps nothing else back.
                failed = handed.error();
                if (failed->code == ErrorCode::DiskFull) break;
                continue;
            }
            if (asks) continue;
            ++m_report.sent;
            done.push_back(row.id);
        }
        if (failed && m_report.sent == 0) return *failed;
        if (failed) m_report.troubles.push_back(*failed);
        return m_store.markPassedOnNow(folderRoute(m_shared), done, m_now);
    }

    void writeReadme() const
    {
        const fs::path path = m_shared / "duskrow" / "README.txt";
        std::error_code failure;
        if (fs::exists(path, failure)) return;
        // Only a courtesy: when it cannot be written, what matters will say so.
        [[maybe_unused]] const auto written = handOver(path, readme, m_store.stream());
    }

    Result<Done> exchangePhotos()
    {
        if (m_report.wasStopped) return Done{};
        const fs::path there = m_home / "p";
        const fs::path here = fs::path(store::photoPath(m_store.path(), "x")).parent_path();
        std::set<std::string> names;
        const auto collect = [&](const fs::path& path) {
            std::array<std::uint8_t, 32> hash{};
            if (parseHex(path.filename().string(), hash)) names.insert(path.filename().string());
        };
        eachEntry(here, mostEntries, collect);
        eachEntry(there, mostEntries, collect);
        for (const std::string& name : names) {
            std::error_code failure;
            const bool isHere = fs::exists(here / name, failure);
            const bool isThere = fs::exists(there / name, failure);
            if (isHere == isThere) continue;
            const auto bytes = readPlainFile((isHere ? here : there) / name, mostPhotoBytes);
            if (!bytes || formatHex(hashOf(*bytes)) != name) continue; // damaged, or not finished copying
            const auto copied = handOver((isHere ? there : here) / name, *bytes, m_store.stream());
            if (!copied) return copied.error();
            ++(isHere ? m_report.photosSent : m_report.photosReceived);
        }
        return Done{};
    }

    store::Store& m_store;
    store::Reader& m_reader;
    fs::path m_shared;
    fs::path m_home;
    Instant m_now;
    const Journey& m_journey;
    ExchangeReport m_report;
    std::set<std::string> m_there; // segments of ours that lie in the folder
};

} // namespace

Result<ExchangeReport> exchangeByFolder(
    store::Store& store, const fs::path& shared, Instant now, const Journey& journey)
{
    std::error_code failure;
    if (!fs::is_directory(shared, failure)) return Error{ErrorCode::FolderMissing, {shared.string()}};
    auto reader = store.reader();
    if (!reader) return reader.error();
    return FolderVisit(store, **reader, shared, now, journey).run();
}

std::string folderRoute(const fs::path& shared)
{
    return "folder:" + shared.lexically_normal().string();
}

std::vector<Uuid> programmesIn(const fs::path& shared)
{
    std::vector<Uuid> found;
    std::error_code failure;
    for (fs::directory_iterator entry(shared / "duskrow", failure);
         !failure && entry != fs::directory_iterator(); entry.increment(failure))
        if (const auto id = parseUuid(entry->path().filename().string())) found.push_back(*id);
    std::sort(found.begin(), found.end());
    return found;
}

} // namespace duskrow::sync
