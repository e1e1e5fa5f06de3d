// SPDX-License-Identifier: MIT
#include "sync/hub/ingest.h"

#include <algorithm>

namespace duskrow::hub {

namespace {

using How = Taken::How;

constexpr int mostStrangers = 100; // that are looked into when the roster changes

Taken refused(Response response)
{
    Taken taken;
    taken.refusal = std::move(response);
    return taken;
}

std::vector<domain::Change> factsOf(const sync::Segment& segment)
{
    std::vector<domain::Change> facts;
    for (const sync::SegmentLine& line : segment.lines)
        if (domain::isRosterKind(line.change.kind)) facts.push_back(line.change);
    return facts;
}

// Why a stream's segment is not taken in by the roster; empty when it is.
std::string objection(const domain::Roster& roster, const sync::SegmentHeader& header)
{
    const auto device = roster.devices().find(header.stream);
    if (device == roster.devices().end()) return "not-enrolled";
    const auto& end = device->second.endedAfter;
    return end && header.first > *end ? "ended" : "";
}

Arrival arrivalOf(const sync::Segment& segment, const StreamId& pushedBy, Instant now)
{
    Arrival arrival;
    arrival.header = segment.head.header;
    arrival.id = segment.head.id;
    arrival.bytes = sync::segmentBytes(segment.head);
    arrival.pushedBy = pushedBy;
    arrival.now = now;
    for (std::size_t n = 0; n < segment.lines.size(); ++n) {
        const domain::Change& change = segment.lines[n].change;
        if (!domain::isRosterKind(change.kind)) continue;
        arrival.facts.emplace_back(static_cast<std::int64_t>(n), segment.lines[n].bytes);
        const auto key = change.kind == "invitation" ? change.fields.find("key") : change.fields.end();
        const auto* text =
            key == change.fields.end() ? nullptr : std::get_if<std::string>(&key->second.value);
        const auto bytes = text == nullptr ? std::nullopt : hexOf<32>(*text);
        if (bytes) arrival.invitations.push_back(*bytes);
    }
    return arrival;
}

// Whether a number of the segment stands with other content in one that is there.
Result<bool> differs(Hub& hub, const Uuid& programme, const sync::Segment& segment)
{
    const auto& header = segment.head.header;
    if (segment.lines.empty()) return false; // needs what this hub lacks
    const auto stored = hub.store.overlapping(programme, header.stream, header.first, header.last);
    if (!stored) return stored.error();
    for (const StoredSegment& other : *stored) {
        auto head = sync::readHead(other.bytes);
        if (!head) return head.error();
        const auto opened = sync::openSegment(std::move(*head));
        if (!opened && opened.error().code == domain::ErrorCode::SegmentNewer) continue;
        if (!opened) return opened.error();
        const auto& held = opened->head.header;
        const auto from = std::max(held.first, header.first);
        const auto to = std::min(held.last, header.last);
        for (std::int64_t number = from; number <= to; ++number)
            if (opened->lines[static_cast<std::size_t>(number - held.first)].leaf
                != segment.lines[static_cast<std::size_t>(number - header.first)].leaf)
                return true;
    }
    return false;
}

Taken store(Hub& hub, const Uuid& programme, const sync::Segment& segment, const StreamId& pushedBy)
{
    Arrival arrival = arrivalOf(segment, pushedBy, hub.now());
    Taken taken;
    taken.roster = static_cast<std::int64_t>(arrival.facts.size());
    for (;;) {
        const auto placed = hub.store.place(programme, arrival);
        if (!placed) return refused(storeFailed(placed.error()));
        taken.receipt = placed->receipt;
        taken.next = placed->next;
        switch (placed->outcome) {
        case Outcome::Stored:
            hub.metrics.countStored(arrival.header.last - arrival.header.first + 1,
                static_cast<std::int64_t>(arrival.bytes.size()));
            taken.how = How::Stored;
            if (arrival.isFork) taken.reason = "fork";
            return taken;
        case Outcome::Had:
            taken.how = How::Had;
            return taken;
        case Outcome::Gap:
            taken.how = How::Gap;
            return taken;
        case Outcome::Compare:
            break;
        }
        const auto isFork = differs(hub, programme, segment);
        if (!isFork) return refused(storeFailed(isFork.error()));
        arrival.isFork = *isFork;
        arrival.comparedAt = placed->next - 1;
    }
}

enum class Aside : std::uint8_t { Keep, Refuse };

Taken take(Hub& hub, const Known& known, sync::SegmentHead head, const StreamId& pushedBy, Aside aside)
{
    const Uuid programme = known.row.programme;
    const sync::SegmentHead asRead = head;
    const auto asideFor = [&](const std::string& reason) {
        if (aside == Aside::Keep)
            return keepAside(hub, programme, asRead, sync::segmentBytes(asRead), reason, pushedBy);
        Taken taken = refused(refusal(403, reason, "This claim does not count."));
        taken.reason = reason;
        return taken;
    };
    std::string reason = objection(*known.roster, head.header);
    // A new stream may bring its own claim in its first segment.
    if (!reason.empty() && head.header.first != 1) return asideFor(reason);
    auto segment = sync::openSegment(std::move(head));
    if (!segment) {
        if (segment.error().code == domain::ErrorCode::SegmentForged) return asideFor("forged");
        // It goes no further than the signature here; others may be able to.
        if (segment.error().code == domain::ErrorCode::SegmentNewer)
            return reason.empty() ? store(hub, programme, sync::Segment{asRead, {}}, pushedBy)
                                  : asideFor(reason);
        return refused(refusalOf(segment.error()));
    }
    if (!reason.empty()) {
        const auto then = hub.rosters.with(known, factsOf(*segment));
        if (!then) return refused(storeFailed(then.error()));
        reason = objection(*then, segment->head.header);
        if (!reason.empty()) return asideFor(reason);
    }
    return store(hub, programme, *segment, pushedBy);
}

} // namespace

Taken ingest(Hub& hub, const Known& known, sync::SegmentHead head, const StreamId& pushedBy)
{
    return take(hub, known, std::move(head), pushedBy, Aside::Keep);
}

Taken ingestClaim(Hub& hub, const Known& known, sync::SegmentHead head)
{
    const StreamId own = head.header.stream;
    return take(hub, known, std::move(head), own, Aside::Refuse);
}

Taken keepAside(Hub& hub, const Uuid& programme, const sync::SegmentHead& head, const std::string& bytes,
    const std::string& reason, const StreamId& pushedBy)
{
    AsideSegment aside;
    aside.file = domain::hashOf(bytes);
    aside.stream = head.header.stream;
    aside.first = head.header.first;
    aside.last = head.header.last;
    aside.id = head.id;
    aside.reason = reason;
    aside.pushedBy = pushedBy;
    aside.received = hub.now();
    aside.bytes = bytes;
    const auto kept = hub.store.putAside(programme, aside);
    if (!kept) return refused(storeFailed(kept.error()));
    if (!*kept) return refused(later(503, "full", "The hub has no room to keep more aside.", 3600));
    hub.metrics.countAside(reason);
    Taken taken;
    taken.how = How::Aside;
    taken.reason = reason;
    return taken;
}

void weighAgain(Hub& hub, const Uuid& programme)
{
    // What is taken in may bring changes to the roster itself; the list is short.
    for (bool isChanged = true; isChanged;) {
        isChanged = false;
        const auto list = hub.store.aside(programme);
        const auto known = list && !list->empty() ? hub.rosters.of(programme) : std::optional<Known>{};
        if (!list || !known || !*known) return;
        int strangers = 0;
        for (const AsideSegment& row : *list) {
            if (row.reason == "forged") continue;
            sync::SegmentHeader header;
            header.stream = row.stream;
            header.first = row.first;
            // Of streams that are still unknown only first segments are looked into, for a claim.
            const bool isStranger = !objection(*(*known)->roster, header).empty();
            if (isStranger && (row.first != 1 || ++strangers > mostStrangers)) continue;
            const auto full = hub.store.asideWithBytes(programme, row.file);
            auto head = full && *full ? sync::readHead((*full)->bytes)
                                      : domain::Error{domain::ErrorCode::StoreDamaged};
            if (!head) continue;
            const Taken taken = take(hub, **known, std::move(*head), row.pushedBy, Aside::Refuse);
            if (taken.how != How::Stored && taken.how != How::Had) continue;
            // It stands in the log now; losing power here leaves it in both places, which harms nothing.
            static_cast<void>(hub.store.takeFromAside(programme, row.file).has_value());
            isChanged = isChanged || taken.how == How::Stored;
        }
    }
}

Response refusalOf(const domain::Error& error)
{
    const std::string what = error.args.empty() ? std::string("content") : error.args.front();
    switch (error.code) {
    case domain::ErrorCode::SegmentUnfinished:
        return refusal(400, "unfinished", "Length or hash do not agree: this is not the whole segment.");
    case domain::ErrorCode::SegmentTooLarge:
        return refusal(413, "too-large", "The segment is larger than allowed: " + what + '.');
    case domain::ErrorCode::SegmentForged:
        return refusal(422, "forged", "Signature, key and stream do not belong together.");
    default:
        return refusal(422, "malformed", "The segment is not well formed: " + what + '.');
    }
}

Response answerOf(const Taken& taken)
{
    const Receipt& receipt = taken.receipt;
    switch (taken.how) {
    case How::Stored:
    case How::Had:
        return jsonAnswer(taken.how == How::Stored ? 201 : 200,
            {{"at", receipt.at}, {"id", domain::formatHex(receipt.id)}, {"last", receipt.last},
                {"stream", domain::formatHex(receipt.stream)}, {"time", domain::toMs(receipt.time)}});
    case How::Gap: {
        Response response = jsonAnswer(409,
            {{"error", "gap"}, {"message", "Changes before these are missing here."}, {"next", taken.next}});
        return response;
    }
    case How::Aside:
        return jsonAnswer(202, {{"reason", taken.reason}});
    case How::Refused:
        break;
    }
    return taken.refusal;
}

} // namespace duskrow::hub
