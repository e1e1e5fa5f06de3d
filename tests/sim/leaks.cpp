// SPDX-License-Identifier: MIT
// Whether the hub shows to everybody what he may read, and no more.
#include <algorithm>

#include "sim/link.h"
#include "sync/segment/segment.h"

namespace duskrow::sim {

using namespace duskrow::domain;

namespace {

// The lines of one segment, against the roster as the hub has it.
void checkSegment(
    World& world, const StreamId& reader, const NaiveRoster& roster, const sync::Segment& segment)
{
    std::int64_t seq = segment.head.header.first - 1;
    for (const sync::SegmentLine& line : segment.lines) {
        const ChangeRef ref{segment.head.header.stream, ++seq};
        if (line.bytes.empty()) {
            world.count("lines left out by the hub");
            const auto& known = world.book.under(ref);
            const bool mayRead = std::all_of(known.begin(), known.end(),
                [&](int one) { return roster.mayRead(reader, world.book.at(one)); });
            if (!known.empty() && mayRead)
                broken("the hub leaves out what may be read: " + canonicalJson(world.book.at(known.front())));
            continue;
        }
        const auto found = world.book.find(line.bytes);
        if (!found) broken("the hub shows a change that nobody wrote: " + line.bytes);
        if (!roster.mayRead(reader, world.book.at(*found)))
            broken("the hub shows " + formatHex(reader) + " what it may not read: " + line.bytes);
    }
}

} // namespace

void checkPage(World& world, const StreamId& reader, const std::string& page)
{
    const NaiveRoster& roster = world.hub->naiveRoster();
    const Uuid member = roster.memberOf(reader);
    for (const std::string& item : itemsIn(page)) {
        auto head = sync::readHead(item);
        if (!head) broken("the hub sends what is no segment");
        const StreamId author = head->header.stream;
        const std::string id(head->id.begin(), head->id.end());
        if (world.book.unread.contains(id)) {
            const bool isOwn = !member.isNil() && roster.memberOf(author) == member;
            if (!isOwn && !roster.isCoordinator(reader))
                broken("the hub shows a segment of which it cannot say who may read it");
            continue;
        }
        const auto segment = sync::openSegment(std::move(*head));
        if (!segment) broken("the hub sends what is not sound");
        checkSegment(world, reader, roster, *segment);
    }
    world.count("pages compared with the rights of their reader");
}

} // namespace duskrow::sim
