// SPDX-License-Identifier: MIT
#include "domain/roster/roster.h"

#include <algorithm>

namespace duskrow::domain {

namespace {

// Whether a change invites this member. He knows the code, so that its key tells him nothing; with it his
// device counts among its own records before a coordinator has confirmed it.
bool isInviting(const Change& change, const Uuid& member)
{
    const auto named = change.fields.find("member");
    return !member.isNil() && named != change.fields.end()
        && named->second.value == Value{formatUuid(member)};
}

} // namespace

bool isRosterKind(std::string_view kind)
{
    static constexpr std::array<std::string_view, 7> kinds{
        "member", "device", "invitation", "assignment", "site", "loan", "admission"};
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

bool Roster::isEnrolled(const StreamId& stream) const
{
    return m_devices.contains(stream);
}

bool Roster::isRoot(const StreamId& stream) const
{
    const auto device = m_devices.find(stream);
    return device != m_devices.end() && device->second.isRoot;
}

bool Roster::isCoordinator(const StreamId& stream) const
{
    const auto device = m_devices.find(stream);
    if (device == m_devices.end()) return false;
    if (device->second.isRoot) return true;
    const auto member = m_members.find(device->second.member);
    return member != m_members.end() && member->second.role == Role::Coordinator;
}

Uuid Roster::memberOf(const StreamId& stream) const
{
    const auto device = m_devices.find(stream);
    return device == m_devices.end() ? Uuid{} : device->second.member;
}

std::set<Uuid> Roster::sitesOf(const Uuid& member) const
{
    std::set<Uuid> sites;
    if (member.isNil()) return sites;
    for (const auto& [site, keeper] : m_keepers)
        if (keeper == member) sites.insert(site);
    for (auto row = m_assigned.lower_bound({member, Uuid{}}); row != m_assigned.end() && row->first == member;
         ++row)
        sites.insert(row->second);
    return sites;
}

bool Roster::mayRead(const StreamId& reader, const Change& change) const
{
    if (isCoordinator(reader)) return true;
    if (change.kind == "invitation") return isInviting(change, memberOf(reader));
    if (change.site.isNil()) return true;
    const Uuid member = memberOf(reader);
    if (member.isNil()) return change.ref.stream == reader;
    if (memberOf(change.ref.stream) == member) return true;
    const auto keeper = m_keepers.find(change.site);
    if (keeper != m_keepers.end() && keeper->second == member) return true;
    if (m_assigned.contains({member, change.site})) return true;
    return std::any_of(m_lendings.begin(), m_lendings.end(),
        [&](const Lending& lending) { return lending.member == member && lending.site == change.site; });
}

std::string Roster::rightsOf(const StreamId& stream) const
{
    const auto device = m_devices.find(stream);
    if (device == m_devices.end()) return {};
    const Uuid member = device->second.member;
    std::string all = formatUuid(member);
    if (device->second.endedAfter) all += " ended " + std::to_string(*device->second.endedAfter);
    if (device->second.isRoot) return all + " root";
    const auto person = m_members.find(member);
    if (person != m_members.end() && person->second.until)
        all += " until " + formatDay(*person->second.until);
    if (isCoordinator(stream)) return all + " coordinator";
    for (const Uuid& site : sitesOf(member)) all += ' ' + formatUuid(site);
    for (const Lending& lending : m_lendings) {
        if (lending.member != member) continue;
        all += " lent " + formatUuid(lending.trap) + formatUuid(lending.site);
        if (lending.from) all += formatDay(*lending.from);
        if (lending.until) all += '-' + formatDay(*lending.until);
    }
    return all;
}

std::string Roster::scopeOf(const StreamId& reader) const
{
    if (isCoordinator(reader)) return "all";
    const Uuid member = memberOf(reader);
    std::set<Uuid> sites = sitesOf(member);
    for (const Lending& lending : m_lendings)
        if (lending.member == member) sites.insert(lending.site);
    std::string all = formatHex(reader);
    for (const auto& [stream, device] : m_devices)
        if (!member.isNil() && device.member == member) all += formatHex(stream);
    for (const Uuid& site : sites) all += formatUuid(site);
    return formatHex(hashOf(all)).substr(0, 32);
}

} // namespace duskrow::domain
