// SPDX-License-Identifier: MIT
#include "domain/roster/roster_reading.h"

namespace duskrow::domain {

// Whether a stream goes on from one of some, over streams that nobody ended.
bool RosterReading::goesOnFrom(
    const StreamId& stream, const std::function<bool(const StreamId&)>& isOne) const
{
    std::set<StreamId> passed;
    for (auto at = m_followers.find(stream); at != m_followers.end() && passed.insert(at->first).second;
         at = m_followers.find(at->second)) {
        if (m_rootEnds.contains(at->second)) return false;
        if (isOne(at->second)) return true;
    }
    return false;
}

Uuid RosterReading::memberBefore(StreamId stream, const std::map<StreamId, Uuid>& members) const
{
    std::set<StreamId> passed;
    for (auto at = m_followers.find(stream); at != m_followers.end() && passed.insert(at->first).second;
         at = m_followers.find(at->second))
        if (const auto found = members.find(at->second); found != members.end()) return found->second;
    return {};
}

// A phone that was put back from a backup writes under a new key, vouched for by the old one: it is the same
// device, unless the old one was ended.
void RosterReading::readFollowers()
{
    for (std::size_t round = 0; round < m_followers.size(); ++round)
        for (const auto& [stream, before] : m_followers) {
            const auto old = m_roster.m_devices.find(before);
            if (old == m_roster.m_devices.end() || old->second.endedAfter) continue;
            EnrolledDevice device = old->second;
            device.stream = stream;
            device.key = {};
            device.isConfirmed = false;
            m_roster.m_devices.insert({stream, device});
        }
}

} // namespace duskrow::domain
