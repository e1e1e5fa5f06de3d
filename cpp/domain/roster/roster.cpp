// SPDX-License-Identifier: MIT
#include "domain/roster/roster.h"

#include <algorithm>

namespace duskrow::domain {

bool isRosterKind(std::string_view kind)
{
    static constexpr std::array<std::string_view, 7> kinds{
        "member", "device", "invitation", "assignment", "site", "loan", "admission"};
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

bool isCreation(const Change& change)
{
    const bool replaces = std::any_of(change.fields.begin(), change.fields.end(),
        [](const auto& field) { return !field.second.base.empty(); });
    const RecordKind* kind = findKind(change.kind);
    if (replaces || !kind) return !replaces;
    const auto home = std::find_if(kind->fields.begin(), kind->fields.end(),
        [](const Field& field) { return field.type == FieldType::Id; });
    return home == kind->fields.end() || change.fields.contains(std::string(home->name));
}

bool Roster::isEnrolled(const StreamId& stream) const
{
    return m_devices.contains(stream) || m_claimants.contains(stream);
}

bool Roster::countsAlways(const StreamId& stream) const
{
    const auto device = m_devices.find(stream);
    return device != m_devices.end() && device->second.isRoot && !device->second.endedAfter;
}

bool Roster::isRoot(const StreamId& stream) const
{
    const auto device = m_devices.find(stream);
    return device != m_devices.end() && device->second.isRoot;
}

bool Roster::isCoordinator(const StreamId& stream) const
{
    const auto device = m_devices.find(stream);
    return device != m_devices.end() && (device->second.isRoot || device->second.isCoordinator);
}

Uuid Roster::memberOf(const StreamId& stream) const
{
    const auto device = m_devices.find(stream);
    return device == m_devices.end() ? Uuid{} : device->second.member;
}

bool Roster::isAtHome(const Uuid& member, const Uuid& site) const
{
    if (member.isNil() || site.isNil()) return false;
    const auto keeper = m_keepers.find(site);
    return (keeper != m_keepers.end() && keeper->second == member) || m_made.contains({member, site})
        || m_assigned.contains({member, site});
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
    const Uuid& site = change.kind == "site" ? change.record : change.site;
    if (site.isNil()) return true;
    const Uuid member = memberOf(reader);
    if (member.isNil()) return change.ref.stream == reader;
    if (memberOf(change.ref.stream) == member) return true;
    const auto keeper = m_keepers.find(site);
    if (keeper != m_keepers.end() && keeper->second == member) return true;
    if (m_assigned.contains({member, site})) return true;
    return std::any_of(m_lendings.begin(), m_lendings.end(),
        [&](const Lending& lending) { return lending.member == member && lending.site == site; });
}

Roster::Rights Roster::rights(const StreamId& stream) const
{
    Rights all;
    for (auto ref = m_admitted.lower_bound({stream, 0}); ref != m_admitted.end() && ref->stream == stream;
         ++ref)
        all.given.insert(" admitted " + std::to_string(ref->seq));
    for (auto ref = m_forRoots.lower_bound({stream, 0}); ref != m_forRoots.end() && ref->stream == stream;
         ++ref)
        all.place += " for roots " + std::to_string(ref->seq);
    const auto device = m_devices.find(stream);
    if (device == m_devices.end()) return all;
    const Uuid member = device->second.member;
    all.place += formatUuid(member);
    if (device->second.endedAfter) all.place += " ended " + std::to_string(*device->second.endedAfter);
    if (device->second.isRoot) {
        all.place += " root";
        return all;
    }
    const auto person = m_members.find(member);
    if (person != m_members.end() && person->second.until)
        all.place += " until " + formatDay(*person->second.until);
    if (isCoordinator(stream)) {
        all.place += " coordinator";
        return all;
    }
    for (const Uuid& site : sitesOf(member)) all.given.insert(' ' + formatUuid(site));
    for (auto row = m_made.lower_bound({member, Uuid{}}); row != m_made.end() && row->first == member; ++row)
        all.given.insert(' ' + formatUuid(row->second));
    for (const Lending& lending : m_lendings) {
        if (lending.member != member) continue;
        std::string lent = " lent " + formatUuid(lending.trap) + formatUuid(lending.site);
        if (lending.from) lent += formatDay(*lending.from);
        if (lending.until) lent += '-' + formatDay(*lending.until);
        all.given.insert(lent);
    }
    return all;
}

std::string Roster::rightsOf(const StreamId& stream) const
{
    const Rights own = rights(stream);
    std::string all = own.place;
    for (const std::string& one : own.given) all += one;
    return all;
}

bool Roster::mayCountLess(const Roster& before, const StreamId& stream) const
{
    const Rights then = before.rights(stream);
    const Rights now = rights(stream);
    if (!std::includes(now.given.begin(), now.given.end(), then.given.begin(), then.given.end())) return true;
    // Of a stream that nobody knew, nothing counted but what was let in by itself.
    const bool wasUnknown = !before.m_devices.contains(stream) && before.m_here != stream;
    return !wasUnknown && then.place != now.place;
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
