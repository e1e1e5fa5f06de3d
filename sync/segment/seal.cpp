// SPDX-License-Identifier: MIT
#include <algorithm>
#include <span>

#include "domain/log/packing.h"
#include "sync/segment/hashes.h"
#include "sync/segment/header_json.h"
#include "sync/segment/layout.h"
#include "sync/segment/segment.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

using Cites = std::map<StreamId, std::int64_t>;

Error malformed(std::string what)
{
    return Error{ErrorCode::SegmentMalformed, {std::move(what)}};
}

void cite(const std::vector<ChangeRef>& refs, const StreamId& own, Cites& cites)
{
    for (const ChangeRef& ref : refs) {
        if (ref.stream == own) continue;
        std::int64_t& highest = cites[ref.stream];
        highest = std::max(highest, ref.seq);
    }
}

Cites citesOf(std::span<const SegmentLine> lines)
{
    Cites cites;
    for (const SegmentLine& line : lines) {
        for (const auto& [name, field] : line.change.fields) cite(field.base, line.change.ref.stream, cites);
        cite(line.change.saw, line.change.ref.stream, cites);
    }
    return cites;
}

Result<SegmentLine> readLine(const Sealing& how, const std::string& bytes)
{
    auto change = readCanonicalChange(bytes);
    if (!change) return malformed("change: " + change.error().args.front());
    if (change->programme != how.programme || change->ref.stream != how.stream)
        return malformed("change: not of this stream");
    return SegmentLine{bytes, std::move(change.value()), leafHash(bytes)};
}

// As many of the changes as one segment holds before packing.
Result<std::vector<SegmentLine>> takeLines(const Sealing& how, const std::vector<std::string>& all)
{
    std::vector<SegmentLine> lines;
    std::size_t raw = 0;
    Cites cites;
    for (const std::string& bytes : all) {
        raw += bytes.size() + 1;
        if (lines.size() == static_cast<std::size_t>(mostChanges)
            || raw > static_cast<std::size_t>(mostRawBytes))
            break;
        auto line = readLine(how, bytes);
        if (!line) return line.error();
        if (!lines.empty() && line->change.ref.seq != lines.back().change.ref.seq + 1)
            return malformed("change: number");
        for (const auto& [stream, number] : citesOf({&line.value(), 1})) cites[stream] = number;
        if (cites.size() > mostCites) break;
        lines.push_back(std::move(line.value()));
    }
    if (lines.empty() && !all.empty()) return Error{ErrorCode::SegmentTooLarge, {"cites"}};
    if (lines.empty()) return malformed("no change");
    return lines;
}

std::string joined(std::span<const SegmentLine> lines)
{
    std::string raw;
    for (const SegmentLine& line : lines) raw.append(line.bytes) += '\n';
    return raw;
}

SegmentHeader headerOf(const Sealing& how, std::span<const SegmentLine> lines, std::size_t rawBytes)
{
    SegmentHeader header;
    header.programme = how.programme;
    header.stream = how.stream;
    header.key = how.key;
    header.first = lines.front().change.ref.seq;
    header.last = lines.back().change.ref.seq;
    header.previous = how.previous;
    header.root = rootHash(lines);
    header.rawBytes = static_cast<std::int64_t>(rawBytes);
    header.roster = how.roster;
    const auto [earliest, latest] = std::minmax_element(lines.begin(), lines.end(),
        [](const SegmentLine& a, const SegmentLine& b) { return a.change.at < b.change.at; });
    header.earliest = earliest->change.at;
    header.latest = latest->change.at;
    header.cites = citesOf(lines);
    return header;
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
    if (how.stream != streamOf(how.key, how.programme)) return malformed("stream");
    const auto taken = takeLines(how, lines);
    if (!taken) return taken.error();
    if ((taken->front().change.ref.seq == 1) != (how.previous == Hash{})) return malformed("prev");
    SegmentHead head;
    std::span<const SegmentLine> kept = *taken;
    std::string raw = joined(kept);
    head.payload = pack(raw);
    // One change always fits: 64 KiB grow by a few bytes at most.
    while (head.payload.size() > mostPayloadBytes && kept.size() > 1) {
        const std::size_t fitting = kept.size() * mostPayloadBytes / head.payload.size();
        kept = kept.first(std::clamp<std::size_t>(fitting, 1, kept.size() - 1));
        raw = joined(kept);
        head.payload = pack(raw);
    }
    head.header = headerOf(how, kept, raw.size());
    head.headerBytes = headerText(head.header);
    head.id = segmentId(head.headerBytes);
    head.signature = sign(signedText(head.headerBytes));
    return head;
}

} // namespace duskrow::sync
