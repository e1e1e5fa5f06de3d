// SPDX-License-Identifier: MIT
#include <algorithm>
#include <span>

#include "domain/log/packing.h"
#include "sync/segment/beside.h"
#include "sync/segment/hashes.h"
#include "sync/segment/header_json.h"
#include "sync/segment/layout.h"
#include "sync/segment/refusals.h"
#include "sync/segment/segment.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

using Cites = std::map<StreamId, std::int64_t>;

// What sealing needs of a change. The change itself is let go as soon as it was read: thousands are sealed
// at once.
struct SealedLine {
    std::string_view bytes;
    std::int64_t seq = 0;
    Instant at;
    Hash leaf{};
};

void cite(const std::vector<ChangeRef>& refs, const StreamId& own, Cites& cites)
{
    for (const ChangeRef& ref : refs) {
        if (ref.stream == own) continue;
        std::int64_t& highest = cites[ref.stream];
        highest = std::max(highest, ref.seq);
    }
}

// What is sealed of a change; what it cites goes into `cites`.
Result<SealedLine> lineOf(const Sealing& how, const Change& change, std::string_view bytes, Cites& cites)
{
    if (change.programme != how.programme || change.ref.stream != how.stream)
        return malformed("change: not of this stream");
    for (const auto& [name, field] : change.fields) cite(field.base, how.stream, cites);
    cite(change.saw, how.stream, cites);
    return SealedLine{bytes, change.ref.seq, change.at, leafHash(bytes)};
}

using ReadLine = std::function<Result<SealedLine>(std::size_t at, std::string_view bytes, Cites& cites)>;

struct Sealed {
    std::vector<SealedLine> lines;
    Cites cites;
};

// Those that one segment holds before packing, whatever they cite.
std::span<const std::string_view> fittingRaw(std::span<const std::string_view> all)
{
    std::size_t count = 0;
    std::size_t raw = 0;
    while (count < all.size() && count < static_cast<std::size_t>(mostChanges)) {
        raw += all[count].size() + 1;
        if (raw > static_cast<std::size_t>(mostRawBytes)) break;
        ++count;
    }
    return all.first(count);
}

// As many of the changes as cite no more than one header holds.
Result<Sealed> takeLines(std::span<const std::string_view> all, const ReadLine& read)
{
    Sealed taken;
    taken.lines.reserve(all.size());
    for (std::size_t at = 0; at < all.size(); ++at) {
        Cites cites;
        const auto line = read(at, all[at], cites);
        if (!line) return line.error();
        if (!taken.lines.empty() && line->seq != taken.lines.back().seq + 1)
            return malformed("change: number");
        const auto fresh = static_cast<std::size_t>(std::count_if(cites.begin(), cites.end(),
            [&](const auto& cited) { return !taken.cites.contains(cited.first); }));
        if (taken.cites.size() + fresh > mostCites) break;
        for (const auto& [stream, number] : cites) {
            std::int64_t& highest = taken.cites[stream];
            highest = std::max(highest, number);
        }
        taken.lines.push_back(*line);
    }
    if (taken.lines.empty() && !all.empty()) return Error{ErrorCode::SegmentTooLarge, {"cites"}};
    if (taken.lines.empty()) return malformed("no change");
    return taken;
}

// The payload, and how many bytes the lines had before packing.
std::pair<std::string, std::size_t> packed(std::span<const std::string_view> lines)
{
    std::size_t size = 0;
    for (const std::string_view line : lines) size += line.size() + 1;
    std::string raw;
    raw.reserve(size);
    for (const std::string_view line : lines) raw.append(line) += '\n';
    return {pack(raw), size};
}

SegmentHeader headerOf(const Sealing& how, const Sealed& sealed, std::size_t rawBytes)
{
    SegmentHeader header;
    header.programme = how.programme;
    header.stream = how.stream;
    header.key = how.key;
    header.first = sealed.lines.front().seq;
    header.last = sealed.lines.back().seq;
    header.previous = how.previous;
    std::vector<Hash> leaves;
    for (const SealedLine& line : sealed.lines) leaves.push_back(line.leaf);
    header.root = rootHash(leaves);
    header.rawBytes = static_cast<std::int64_t>(rawBytes);
    header.roster = how.roster;
    const auto [earliest, latest] = std::minmax_element(sealed.lines.begin(), sealed.lines.end(),
        [](const SealedLine& a, const SealedLine& b) { return a.at < b.at; });
    header.earliest = earliest->at;
    header.latest = latest->at;
    header.cites = sealed.cites;
    return header;
}

Result<SegmentHead> sealBy(
    const Sealing& how, const std::vector<std::string_view>& lines, const Sign& sign, const ReadLine& read)
{
    if (how.stream != streamOf(how.key, how.programme)) return malformed("stream");
    std::span<const std::string_view> fitting = fittingRaw(lines);
    SegmentHead head;
    Result<Sealed> taken = malformed("no change");
    std::size_t rawBytes = 0;
    // One change always fits: 64 KiB grow by a few bytes at most.
    while (true) {
        // Most often all of them go in: they are packed while they are read.
        auto packing = beside(fitting.size(), [fitting] { return packed(fitting); });
        taken = takeLines(fitting, read);
        auto [payload, raw] = packing.get();
        if (!taken) return taken.error();
        const std::size_t all = taken->lines.size();
        if (all < fitting.size()) {
            fitting = fitting.first(all);
        } else if (payload.size() > mostPayloadBytes && all > 1) {
            fitting =
                fitting.first(std::clamp<std::size_t>(all * mostPayloadBytes / payload.size(), 1, all - 1));
        } else {
            head.payload = std::move(payload);
            rawBytes = raw;
            break;
        }
    }
    if ((taken->lines.front().seq == 1) != (how.previous == Hash{})) return malformed("prev");
    head.header = headerOf(how, *taken, rawBytes);
    head.headerBytes = headerText(head.header);
    head.id = segmentId(head.headerBytes);
    head.signature = sign(signedText(head.headerBytes));
    return head;
}

} // namespace

std::string segmentBytes(const SegmentHead& head)
{
    std::string bytes(segmentMagic);
    appendNumber(bytes, head.headerBytes.size(), 4);
    bytes += head.headerBytes;
    bytes += static_cast<char>(head.form == Form::Whole ? 0 : 1);
    bytes += head.payload;
    bytes.append(reinterpret_cast<const char*>(head.signature.data()), head.signature.size());
    appendNumber(bytes, bytes.size() + 8 + hashBytes, 8);
    const Hash hash = hashOf(bytes);
    return bytes.append(reinterpret_cast<const char*>(hash.data()), hash.size());
}

Result<SegmentHead> seal(const Sealing& how, const std::vector<std::string>& lines, const Sign& sign)
{
    return sealBy(how, {lines.begin(), lines.end()}, sign,
        [&](std::size_t, std::string_view bytes, Cites& cites) -> Result<SealedLine> {
            const auto change = readCanonicalChange(bytes);
            if (!change) return malformed("change: " + change.error().args.front());
            return lineOf(how, *change, bytes, cites);
        });
}

Result<SegmentHead> seal(const Sealing& how, std::span<const Change> changes,
    const std::vector<std::string_view>& lines, const Sign& sign)
{
    return sealBy(how, lines, sign, [&](std::size_t at, std::string_view bytes, Cites& cites) {
        return lineOf(how, changes[at], bytes, cites);
    });
}

} // namespace duskrow::sync
