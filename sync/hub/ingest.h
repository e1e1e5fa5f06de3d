// SPDX-License-Identifier: MIT
#pragma once

#include "sync/hub/call.h"

namespace duskrow::hub {

// What became of a segment.
struct Taken {
    enum class How : std::uint8_t { Stored, Had, Gap, Aside, Refused } how = How::Refused;
    Receipt receipt; // of Stored and Had
    std::int64_t next = 0; // of Gap
    std::string reason; // of Aside: not-enrolled, ended, forged
    Response refusal; // of Refused
    std::int64_t roster = 0; // changes to the roster that it brought
};

// The checks of FORMAT.md section 3 in their order, and then into the store. `head` has passed readHead.
Taken ingest(Hub& hub, const Known& known, sync::SegmentHead head, const StreamId& pushedBy);

// For joining: as ingest, and what would be kept aside is not kept.
Taken ingestClaim(Hub& hub, const Known& known, sync::SegmentHead head);

// Keeps a file aside that failed a check which its author, not the way here, is to blame for.
Taken keepAside(Hub& hub, const Uuid& programme, const sync::SegmentHead& head, const std::string& bytes,
    const std::string& reason, const StreamId& pushedBy);

// Takes in what was kept aside and may count by now: the roster has changed.
void weighAgain(Hub& hub, const Uuid& programme);

Response answerOf(const Taken& taken);
// A refusal for what the codec says of a segment.
Response refusalOf(const domain::Error& error);

} // namespace duskrow::hub
