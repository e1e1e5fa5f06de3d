// SPDX-License-Identifier: MIT
#include "sync/exchange/segments_of_store.h"

#include <algorithm>

#include "sync/exchange/refusal_code.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

store::SegmentRow rowOf(const SegmentHead& head)
{
    return {head.header.stream, head.header.first, head.header.last, head.id, head.header.previous,
        head.form == Form::Whole,
        std::string(reinterpret_cast<const char*>(head.signature.data()), head.signature.size()),
        head.headerBytes, head.payload};
}

store::IncomingSegment incoming(Segment segment)
{
    store::IncomingSegment made{rowOf(segment.head), segment.head.header.cites, {}};
    made.lines.reserve(segment.lines.size());
    for (SegmentLine& line : segment.lines)
        if (line.bytes.empty())
            made.lines.push_back({'-' + formatHex(line.leaf), std::nullopt});
        else
            made.lines.push_back({std::move(line.bytes), std::move(line.change)});
    return made;
}

// A segment may need what this version lacks: then it is kept and passed on, and not looked into.
store::IncomingSegment unread(const SegmentHead& head)
{
    store::IncomingSegment made{rowOf(head), head.header.cites, {}};
    made.lines.resize(static_cast<std::size_t>(head.header.last - head.header.first + 1));
    return made;
}

} // namespace

namespace {

// Who signs the tail of a stream.
struct Signer {
    StreamId stream{};
    PublicKey key{};
    Sign sign;
};

Result<std::int64_t> sealTailOf(store::Store& store, store::Reader& reader, const Signer& signer)
{
    std::int64_t made = 0;
    std::optional<std::int64_t> rosterChanges;
    while (true) {
        const auto tail = store::unsealedTail(reader, signer.stream, mostChanges);
        if (!tail) return tail.error();
        if (tail->lines.empty()) return made;
        if (!rosterChanges) {
            const auto roster = store.rosterNow();
            if (!roster) return roster.error();
            rosterChanges = roster->changes();
        }
        const Sealing how{.programme = store.programme(),
            .stream = signer.stream,
            .key = signer.key,
            .previous = tail->previous,
            .roster = *rosterChanges};
        const auto head = seal(how, tail->lines, signer.sign);
        if (!head) return head.error();
        if (const auto kept = store.sealNow(rowOf(*head)); !kept) return kept.error();
        ++made;
    }
}

} // namespace

Result<std::int64_t> sealTail(store::Store& store, store::Reader& reader)
{
    // What an earlier stream of this device wrote and never handed over comes first.
    std::int64_t made = 0;
    for (const store::StreamKey& key : store.formerKeys()) {
        const auto sealed = sealTailOf(store, reader,
            {key.stream, key.publicKey,
                [&](std::string_view message) { return store::signWith(key, message); }});
        if (!sealed) return sealed.error();
        made += *sealed;
    }
    const auto sealed = sealTailOf(store, reader,
        {store.stream(), store.publicKey(), [&](std::string_view message) { return store.sign(message); }});
    if (!sealed) return sealed.error();
    return made + *sealed;
}

Result<Done> refuse(store::Store& store, std::string_view bytes, const std::string& origin,
    const Error& reason, Instant now, ExchangeReport& report)
{
    ++report.keptAside;
    return store.keepAsideNow({hashOf(bytes), origin, refusalText(reason), now}, bytes);
}

Result<store::TakenAs> takeIn(store::Store& store, std::string_view bytes, const std::string& origin,
    Instant now, ExchangeReport& report)
{
    const auto refused = [&](const Error& reason) -> Result<store::TakenAs> {
        if (const auto kept = refuse(store, bytes, origin, reason, now, report); !kept) return kept.error();
        return store::TakenAs::Known;
    };
    auto head = readHead(bytes);
    if (!head && head.error().code == ErrorCode::SegmentUnfinished) {
        ++report.unfinished;
        return store::TakenAs::Known;
    }
    if (!head) return refused(head.error());
    if (head->header.programme != store.programme()) return refused({ErrorCode::OtherProgramme, {origin}});
    auto segment = openSegment(*head);
    const bool isNewer = !segment && segment.error().code == ErrorCode::SegmentNewer;
    if (!segment && !isNewer) return refused(segment.error());
    const auto taken = store.takeNow(isNewer ? unread(*head) : incoming(std::move(*segment)));
    if (!taken) return taken.error();
    report.metFork = report.metFork || taken->isFork;
    report.changes += taken->changes;
    if (taken->as != store::TakenAs::Known) ++report.received;
    if (taken->as == store::TakenAs::Waits) ++report.waiting;
    return taken->as;
}

Result<std::optional<std::string>> bytesOf(store::Reader& reader, const store::SegmentId& id)
{
    const auto row = store::segmentRow(reader, id);
    if (!row) return row.error();
    if (!*row) return std::optional<std::string>{};
    SegmentHead head;
    head.form = (*row)->isWhole ? Form::Whole : Form::Partial;
    head.headerBytes = (*row)->header;
    head.payload = (*row)->payload;
    if ((*row)->signature.size() == head.signature.size())
        std::copy((*row)->signature.begin(), (*row)->signature.end(), head.signature.begin());
    return std::optional(segmentBytes(head));
}

} // namespace duskrow::sync
