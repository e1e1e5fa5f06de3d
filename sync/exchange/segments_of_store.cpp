// SPDX-License-Identifier: MIT
#include "sync/exchange/segments_of_store.h"

#include <algorithm>

namespace duskrow::sync {

using namespace duskrow::domain;

store::SegmentRow rowOf(const SegmentHead& head)
{
    return {head.header.stream, head.header.first, head.header.last, head.id, head.header.previous,
        head.form == Form::Whole,
        std::string(reinterpret_cast<const char*>(head.signature.data()), head.signature.size()),
        head.headerBytes, head.payload};
}

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
    if (const auto noted = store.noteSealedNow(); !noted) return noted.error();
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

Result<bool> isTailFull(const store::Store& store, store::Reader& reader)
{
    return store::isTailAsLong(reader, store.stream(), fullTail);
}

Result<std::int64_t> sealFullTail(store::Store& store, store::Reader& reader)
{
    const auto isFull = isTailFull(store, reader);
    if (!isFull) return isFull.error();
    return *isFull ? sealTail(store, reader) : std::int64_t{0};
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
