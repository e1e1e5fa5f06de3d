// SPDX-License-Identifier: MIT
#include <algorithm>
#include <sodium.h>

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

// Whether the end says what the bytes before it are: a file that is still being copied does not.
bool isWhole(std::string_view bytes)
{
    if (bytes.size() < leastSegmentBytes || readNumber(bytes.substr(bytes.size() - 40), 8) != bytes.size())
        return false;
    const Hash hash = hashOf(bytes.substr(0, bytes.size() - hashBytes));
    const auto* said = reinterpret_cast<const std::uint8_t*>(bytes.data()) + bytes.size() - hashBytes;
    return std::equal(hash.begin(), hash.end(), said);
}

bool isSigned(const SegmentHead& head)
{
    const std::string text = signedText(head.headerBytes);
    return sodium_init() >= 0 && domain::isSignedBy(head.header.key, text, head.signature);
}

// One line is the bytes of a change, or in the partial form '-' and the leaf hash.
bool readLine(std::string_view text, Form form, SegmentLine& line)
{
    if (text.empty()) return false;
    if (form == Form::Partial && text.starts_with('-')) return parseHex(text.substr(1), line.leaf);
    line.bytes = text;
    line.leaf = leafHash(text);
    return true;
}

// Splits the payload; nothing when it has another number of lines or a line is no line.
std::optional<std::vector<SegmentLine>> splitLines(std::string_view raw, const SegmentHead& head)
{
    const auto wanted = static_cast<std::size_t>(head.header.last - head.header.first + 1);
    if (wanted > raw.size()) return std::nullopt;
    std::vector<SegmentLine> lines(wanted);
    for (SegmentLine& line : lines) {
        const std::size_t end = raw.find('\n');
        if (end == std::string_view::npos || !readLine(raw.substr(0, end), head.form, line))
            return std::nullopt;
        raw.remove_prefix(end + 1);
    }
    return raw.empty() ? std::optional(std::move(lines)) : std::nullopt;
}

// The changes of some of the lines, of which the first has this number.
Result<Done> readSome(const SegmentHeader& header, std::int64_t number, std::span<SegmentLine> lines)
{
    for (SegmentLine& line : lines) {
        const ChangeRef due{header.stream, number++};
        if (line.bytes.empty()) continue;
        auto change = readCanonicalChange(line.bytes);
        if (!change)
            return malformed("change " + std::to_string(due.seq) + ": " + change.error().args.front());
        if (change->programme != header.programme || change->ref != due)
            return malformed("change " + std::to_string(due.seq) + ": not of this segment");
        line.change = std::move(change.value());
    }
    return Done{};
}

// In two halves, each on a core of its own.
Result<Done> readChanges(const SegmentHeader& header, std::span<SegmentLine> lines)
{
    const std::size_t half = lines.size() / 2;
    auto later = beside(lines.size(), [&] {
        return readSome(header, header.first + static_cast<std::int64_t>(half), lines.subspan(half));
    });
    const auto earlier = readSome(header, header.first, lines.first(half));
    const auto rest = later.get();
    return earlier ? rest : earlier;
}

} // namespace

Result<SegmentHead> readHead(std::string_view bytes)
{
    if (bytes.size() > mostSegmentBytes) return tooLarge("file");
    if (!isWhole(bytes)) return Error{ErrorCode::SegmentUnfinished};
    if (!bytes.starts_with(segmentMagic)) return malformed("magic");
    bytes.remove_suffix(tailBytes - signatureBytes);
    bytes.remove_prefix(segmentMagic.size());
    const std::size_t headerBytes = readNumber(bytes, 4);
    bytes.remove_prefix(4);
    if (headerBytes > mostHeaderBytes) return tooLarge("header");
    if (headerBytes + 1 + signatureBytes > bytes.size()) return malformed("header length");
    SegmentHead head;
    head.headerBytes = bytes.substr(0, headerBytes);
    const char form = bytes[headerBytes];
    if (form != 0 && form != 1) return malformed("form");
    head.form = form == 0 ? Form::Whole : Form::Partial;
    const std::string_view payload =
        bytes.substr(headerBytes + 1, bytes.size() - headerBytes - 1 - signatureBytes);
    if (head.form == Form::Whole && payload.size() > mostPayloadBytes) return tooLarge("payload");
    auto header = readHeader(head.headerBytes);
    if (!header) return header.error();
    head.header = std::move(header.value());
    if (head.header.stream != streamOf(head.header.key, head.header.programme))
        return Error{ErrorCode::SegmentForged};
    head.id = segmentId(head.headerBytes);
    head.payload = payload;
    std::copy(bytes.end() - signatureBytes, bytes.end(), head.signature.begin());
    return head;
}

Result<Segment> openSegment(SegmentHead head)
{
    if (!isSigned(head)) return Error{ErrorCode::SegmentForged};
    const SegmentHeader& header = head.header;
    if (!header.needs.empty()) return Error{ErrorCode::SegmentNewer, {header.needs.front()}};
    const std::int64_t leftOut =
        head.form == Form::Partial ? leftOutBytes * (header.last - header.first + 1) : 0;
    const auto raw = unpack(head.payload, static_cast<std::size_t>(header.rawBytes + leftOut));
    if (!raw) return raw.error();
    if (head.form == Form::Whole && static_cast<std::int64_t>(raw->size()) != header.rawBytes)
        return malformed("raw");
    auto lines = splitLines(*raw, head);
    if (!lines) return malformed("lines");
    std::vector<Hash> leaves;
    leaves.reserve(lines->size());
    for (const SegmentLine& line : *lines) leaves.push_back(line.leaf);
    if (rootHash(leaves) != header.root) return malformed("root");
    if (const auto changes = readChanges(header, *lines); !changes) return changes.error();
    return Segment{std::move(head), std::move(*lines)};
}

} // namespace duskrow::sync
