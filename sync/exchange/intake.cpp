// SPDX-License-Identifier: MIT
#include "sync/exchange/intake.h"

#include "sync/exchange/refusal_code.h"
#include "sync/exchange/segments_of_store.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

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

Result<Done> Intake::refuse(std::string_view bytes, const std::string& origin, const Error& reason)
{
    if (const auto before = finish(); !before) return before;
    ++m_report.keptAside;
    return m_store.keepAsideNow({hashOf(bytes), origin, refusalText(reason), m_now}, bytes);
}

Result<Done> Intake::finish()
{
    if (!m_underWay.valid()) return Done{};
    const auto taken = m_underWay.get();
    if (!taken) return taken.error();
    m_report.metFork = m_report.metFork || taken->isFork;
    m_report.changes += taken->changes;
    if (taken->as != store::TakenAs::Known) ++m_report.received;
    if (taken->as == store::TakenAs::Waits) ++m_report.waiting;
    return Done{};
}

Result<Done> Intake::add(std::string_view bytes, const std::string& origin)
{
    auto head = readHead(bytes);
    if (!head && head.error().code == ErrorCode::SegmentUnfinished) {
        ++m_report.unfinished;
        return Done{};
    }
    if (!head) return refuse(bytes, origin, head.error());
    if (head->header.programme != m_store.programme())
        return refuse(bytes, origin, {ErrorCode::OtherProgramme, {origin}});
    auto segment = openSegment(*head);
    const bool isNewer = !segment && segment.error().code == ErrorCode::SegmentNewer;
    if (!segment && !isNewer) return refuse(bytes, origin, segment.error());
    auto came = isNewer ? unread(*head) : incoming(std::move(*segment));
    if (const auto before = finish(); !before) return before;
    m_underWay = m_store.take(std::move(came));
    return Done{};
}

} // namespace duskrow::sync
