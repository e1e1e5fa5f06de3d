// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "domain/log/change.h"
#include "domain/roster/roster.h"
#include "store/reader.h"

// Segments as the store keeps them; what their bytes mean is known one layer up.
namespace duskrow::store {

using SegmentId = std::array<std::uint8_t, 32>;

struct SegmentRow {
    domain::StreamId stream{};
    std::int64_t first = 0;
    std::int64_t last = 0;
    SegmentId id{};
    SegmentId previous{}; // all zero for the first of a stream
    bool isWhole = true;
    std::string signature; // 64 bytes
    std::string header;
    std::string payload; // packed; empty where only the row was asked for
    std::int64_t size = 0; // of header and payload, where only the row was asked for
};

// A segment that passed every check, on its way into the store.
struct IncomingSegment {
    SegmentRow row;
    std::map<domain::StreamId, std::int64_t> cites;
    struct Line {
        std::string bytes; // of the change, or "-" and the hash of one left out
        std::optional<domain::Change> change; // nothing when left out
    };
    std::vector<Line> lines; // numbers first to last
};

// New records of the own stream, sealed before they were ever rows of its tail.
struct SealedBatch {
    struct Part {
        SegmentRow row;
        std::vector<domain::Change> changes; // of its numbers; one for each record
    };
    std::vector<Part> parts; // one behind the other
    std::string import = {}; // the import they belong to
};

enum class SealedAs {
    Kept,
    Overtaken, // nothing was done: the stream does not end just before them any more
    NotNew, // nothing was done: the log holds changes of one of the records, or they are of one twice
};

enum class TakenAs {
    Used, // its changes are among the records now
    Known, // was there already
    Fuller, // was there with more left out
    Waits, // the one before it is not here yet
};

struct Taken {
    TakenAs as = TakenAs::Known;
    bool isFork = false; // other content under the same numbers: both are kept
    std::int64_t changes = 0; // that are used now, with those of segments that had waited for this one
};

// What was refused, to be looked at later. Its bytes lie in `STORE.d/aside`.
struct AsideRow {
    SegmentId hash{}; // of the bytes
    std::string origin; // file or address it came from
    std::string reason; // a word and what fills its sentence, separated by line feeds
    domain::Instant at;
};

// A change that is in the log but not among the records, and why.
struct AsideChange {
    domain::Uuid record;
    std::string kind;
    domain::ChangeRef change;
    std::string reason; // not_enrolled, ended ... proposal
};

struct OpenDifference {
    domain::Uuid record;
    std::string kind;
    std::string field;
};

// Up to which number all of a stream is here, and how far others say that it goes.
struct StreamState {
    std::int64_t used = 0;
    std::int64_t known = 0; // highest number seen, used or waiting or only cited
    bool isForked = false;
};

// A set of streams as one setting keeps it, and back.
std::set<domain::StreamId> streamsIn(std::string_view text);
std::string textOf(const std::set<domain::StreamId>& streams);

domain::Result<std::map<domain::StreamId, StreamState>> streamStates(Reader& reader);
// Rows without header and payload, in the order of arrival; `route` leaves out what went that way already.
domain::Result<std::vector<SegmentRow>> segmentRows(Reader& reader, const std::string& withoutRoute = {});
domain::Result<std::optional<SegmentRow>> segmentRow(Reader& reader, const SegmentId& id);
// The last segment of a stream that is used, without header and payload; nothing when there is none.
domain::Result<std::optional<SegmentRow>> lastSegment(Reader& reader, const domain::StreamId& stream);
// How many changes of the own stream stand in no segment yet, and the bytes of the first of them.
struct Tail {
    std::int64_t first = 0;
    std::vector<std::string> lines;
    SegmentId previous{};
};
domain::Result<Tail> unsealedTail(Reader& reader, const domain::StreamId& own, std::int64_t most);
// Whether the own stream has so many numbers that stand in no segment yet.
domain::Result<bool> isTailAsLong(Reader& reader, const domain::StreamId& own, std::int64_t changes);
domain::Result<std::vector<AsideRow>> asideRows(Reader& reader);
domain::Result<std::vector<AsideChange>> asideChanges(Reader& reader);
domain::Result<std::vector<OpenDifference>> openDifferences(Reader& reader);
// Records whose ruling is stale.
domain::Result<std::vector<OpenDifference>> staleRulings(Reader& reader);
// Own changes by how far they got: in no segment handed over, handed over somewhere, at a hub.
struct HandedOver {
    std::int64_t here = 0;
    std::int64_t handedOver = 0;
    std::int64_t atHub = 0;
};
domain::Result<HandedOver> handedOver(Reader& reader, const domain::StreamId& own);
domain::Result<HandedOver> handedOver(
    Reader& reader, const domain::StreamId& own, const domain::Uuid& record);
// The photographs that records name, by the hash of their content.
domain::Result<std::vector<std::string>> photosNamed(Reader& reader);
// The programme whose records a store holds.
domain::Result<domain::Uuid> programmeOf(Reader& reader);
domain::Result<domain::Roster> rosterOf(Reader& reader, const domain::Uuid& programme);
// A record with all that still stands of it: what differs, proposals, what is kept aside. Nothing when there
// is no such record.
domain::Result<std::optional<domain::Folded>> foldedRecord(
    Reader& reader, const domain::Roster& roster, const domain::Uuid& programme, const domain::Uuid& record);

} // namespace duskrow::store
