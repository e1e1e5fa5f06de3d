// SPDX-License-Identifier: MIT
#include "domain/log/packing.h"
#include "sync/segment/segment.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

constexpr int thoroughLevel = 19;

} // namespace

SegmentHead partialForm(const Segment& whole, const std::function<bool(const Change&)>& mayRead)
{
    SegmentHead head = whole.head;
    head.form = Form::Partial;
    std::string raw;
    for (const SegmentLine& line : whole.lines) {
        if (!line.bytes.empty() && mayRead(line.change))
            raw += line.bytes;
        else
            raw += '-' + formatHex(line.leaf);
        raw += '\n';
    }
    head.payload = pack(raw);
    // Its author may have packed it harder than we do.
    if (head.payload.size() > mostPayloadBytes) head.payload = pack(raw, thoroughLevel);
    return head;
}

} // namespace duskrow::sync
