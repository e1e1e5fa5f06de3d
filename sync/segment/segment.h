// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <functional>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "domain/log/change.h"

// Consecutive changes of one stream, signed; the unit of every route. FORMAT.md section 3 describes the
// bytes.
namespace duskrow::sync {

using Hash = std::array<std::uint8_t, 32>;
using domain::PublicKey;
using domain::Signature;

inline constexpr std::size_t mostSegmentBytes = std::size_t{2} << 20;
inline constexpr std::size_t mostPayloadBytes = std::size_t{1} << 20;
inline constexpr std::int64_t mostRawBytes = std::int64_t{8} << 20;
inline constexpr std::int64_t mostChanges = 5000;

enum class Form : std::uint8_t { Whole, Partial };

struct SegmentHeader {
    domain::Uuid programme;
    domain::StreamId stream{};
    PublicKey key{};
    std::int64_t first = 0;
    std::int64_t last = 0;
    Hash previous{}; // all zero for the first segment of a stream
    Hash root{};
    std::int64_t rawBytes = 0;
    std::int64_t roster = 0; // changes to the roster that its author knew
    domain::Instant earliest;
    domain::Instant latest;
    std::map<domain::StreamId, std::int64_t> cites; // highest number cited of each other stream
    std::vector<std::string> needs;
};

// A segment whose length, hash, limits and header agree; its signature and content have not been looked at.
struct SegmentHead {
    SegmentHeader header;
    Hash id{};
    Form form = Form::Whole;
    std::string headerBytes;
    std::string payload; // still packed
    Signature signature{};
};

// A line of a segment: the bytes of a change and what they say, or only the hash of one left out.
struct SegmentLine {
    std::string bytes; // empty when left out
    domain::Change change; // meaningless when left out
    Hash leaf{};
};

// A segment that passed every check but the roster.
struct Segment {
    SegmentHead head;
    std::vector<SegmentLine> lines; // numbers first to last
};

// The first half of the checks, in their order, before anything is unpacked.
//
// Errors  SegmentUnfinished {} when length or file hash do not agree (still being copied, or cut);
//         SegmentMalformed {what}; SegmentTooLarge {what}; SegmentForged {} when the stream is not the hash
//         of the key
domain::Result<SegmentHead> readHead(std::string_view bytes);

// The second half: signature, abilities needed, unpacking within bounds, leaf hashes, every change.
//
// Errors  SegmentForged {}; SegmentNewer {ability}: keep it and pass it on; SegmentMalformed {what};
//         SegmentTooLarge {what}
domain::Result<Segment> openSegment(SegmentHead head);

// The bytes of a segment, put together again from its parts.
std::string segmentBytes(const SegmentHead& head);

// Signs whatever it is handed; the key itself stays where it is kept.
using Sign = std::function<Signature(std::string_view)>;

struct Sealing {
    domain::Uuid programme;
    domain::StreamId stream{};
    PublicKey key{};
    Hash previous{};
    std::int64_t roster = 0;
};

// Makes a whole segment of as many of these changes as the limits allow, beginning with the first. The lines
// hold the bytes of consecutive changes of one stream; there is at least one. Sealing the same again gives
// the same id.
//
// Errors  SegmentMalformed {what} when a line is no change of this stream, or numbers have a gap;
//         SegmentTooLarge {"cites"} when the first change alone cites more streams than a header holds
domain::Result<SegmentHead> seal(const Sealing& how, const std::vector<std::string>& lines, const Sign& sign);

// As above, of changes that were just made, and of whose lines there is no doubt.
//
// lines  their bytes, in their order
domain::Result<SegmentHead> seal(const Sealing& how, std::span<const domain::Change> changes,
    const std::vector<std::string_view>& lines, const Sign& sign);

// The form for a reader who may see only some of the changes.
SegmentHead partialForm(const Segment& whole, const std::function<bool(const domain::Change&)>& mayRead);

} // namespace duskrow::sync
