// SPDX-License-Identifier: MIT
#include <algorithm>

#include "domain/roster/roster.h"

namespace duskrow::domain {

namespace {

// Kinds of the whole programme, which growers and agronomists read but do not write.
bool isCoordinatorKind(const std::string& kind)
{
    static constexpr std::array<std::string_view, 8> kinds{
        "programme", "season", "protocol_use", "member", "invitation", "assignment", "ruling", "admission"};
    return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

// What a borrower does at a trap.
bool isTrapWork(const std::string& kind)
{
    return kind == "service" || kind == "visit" || kind == "sample";
}

bool isCreation(const Change& change)
{
    return std::all_of(change.fields.begin(), change.fields.end(),
        [](const auto& field) { return field.second.base.empty(); });
}

Uuid trapIn(const Change& change)
{
    const auto trap = change.fields.find("trap");
    const auto* text = trap == change.fields.end() ? nullptr : std::get_if<std::string>(&trap->second.value);
    return text ? parseUuid(*text).value_or(Uuid{}) : Uuid{};
}

LocalDay workDay(const Change& change)
{
    const auto day = change.fields.find("day");
    const auto* text = day == change.fields.end() ? nullptr : std::get_if<std::string>(&day->second.value);
    const auto parsed = text ? parseDay(*text) : Result<LocalDay>(Error{ErrorCode::NotADay});
    return parsed ? *parsed : dayOf(change.at, change.offset);
}

const Uuid& siteOf(const Change& change)
{
    return change.kind == "site" ? change.record : change.site;
}

// The first in the fixed order of those that made the record.
const Change* makerOf(std::span<const Change> changes, const std::vector<Standing>& standings)
{
    const Change* maker = nullptr;
    for (std::size_t i = 0; i < changes.size(); ++i) {
        if (standings[i] != Standing::Counts || !isCreation(changes[i])) continue;
        if (!maker || changes[i].ref < maker->ref) maker = &changes[i];
    }
    return maker;
}

} // namespace

Standing Roster::standing(const Change& change) const
{
    if (m_admitted.contains(change.ref)) return Standing::Counts;
    const auto found = m_devices.find(change.ref.stream);
    if (found == m_devices.end())
        return m_here == change.ref.stream ? Standing::Counts : Standing::NotEnrolled;
    const EnrolledDevice& device = found->second;
    if (device.endedAfter && change.ref.seq > *device.endedAfter) return Standing::Ended;
    const auto member = m_members.find(device.member);
    if (!device.isRoot && member != m_members.end() && member->second.until
        && workDay(change) > *member->second.until)
        return Standing::MemberEnded;
    return byRole(change, device);
}

Standing Roster::byRole(const Change& change, const EnrolledDevice& device) const
{
    if (device.isRoot) return Standing::Counts;
    if (isCoordinator(device.stream)) {
        // The roster itself was read by the finer rules; here it is said what a coordinator must leave to a
        // root.
        const auto role = change.fields.find("role");
        const bool raises = change.kind == "member" && role != change.fields.end()
            && role->second.value == Value{std::string("coordinator")};
        const bool makesRoot = change.kind == "device" && change.fields.contains("root");
        return raises || makesRoot ? Standing::RootOnly : Standing::Counts;
    }
    if (isCoordinatorKind(change.kind)) return Standing::CoordinatorOnly;
    if (change.kind == "device") {
        const auto stream = change.fields.find("stream");
        const bool isOwnClaim =
            stream != change.fields.end() && stream->second.value == Value{formatHex(device.stream)};
        return isOwnClaim ? Standing::Counts : Standing::CoordinatorOnly;
    }
    if (change.kind == "district") return isCreation(change) ? Standing::Counts : Standing::CoordinatorOnly;
    if (device.member.isNil()) return Standing::NotYours;
    if (settlesOthers(change, device.member)) return Standing::SettlingNotYours;
    return atSite(change, device.member);
}

Standing Roster::atSite(const Change& change, const Uuid& member) const
{
    const Uuid& site = siteOf(change);
    if (site.isNil()) return Standing::CoordinatorOnly;
    const auto keeper = m_keepers.find(site);
    if (keeper != m_keepers.end() && keeper->second == member) return Standing::Counts;
    if (m_assigned.contains({member, site})) return Standing::Counts;
    return isLentTo(member, change) ? Standing::Counts : Standing::NotYours;
}

// Without a trap in the change, its record's own was looked at when it was made (weigh).
bool Roster::isLentTo(const Uuid& member, const Change& change) const
{
    if (!isTrapWork(change.kind)) return false;
    const Uuid trap = trapIn(change);
    const LocalDay day = workDay(change);
    return std::any_of(m_lendings.begin(), m_lendings.end(), [&](const Lending& lending) {
        return lending.member == member && lending.site == change.site
            && (trap.isNil() || trap == lending.trap) && (!lending.from || day >= *lending.from)
            && (!lending.until || day <= *lending.until);
    });
}

// Whether a measured field is set in view of values of several people, one of whom is another.
bool Roster::settlesOthers(const Change& change, const Uuid& member) const
{
    const RecordKind* kind = findKind(change.kind);
    for (const auto& [name, set] : change.fields) {
        const Field* field = kind ? kind->find(name) : nullptr;
        if (set.base.size() < 2 || !field || field->merge != MergeClass::Measured) continue;
        for (const ChangeRef& ref : set.base)
            if (memberOf(ref.stream) != member) return true;
    }
    return false;
}

std::vector<Standing> Roster::weigh(std::span<const Change> ofOneRecord) const
{
    std::vector<Standing> standings;
    standings.reserve(ofOneRecord.size());
    for (const Change& change : ofOneRecord) standings.push_back(standing(change));
    if (ofOneRecord.size() < 2 || m_isAlone) return standings;

    const Change* maker = makerOf(ofOneRecord, standings);
    if (!maker) return standings;
    for (std::size_t i = 0; i < ofOneRecord.size(); ++i) {
        const Change& change = ofOneRecord[i];
        if (standings[i] != Standing::Counts || isCoordinator(change.ref.stream)) continue;
        if (m_admitted.contains(change.ref)) continue;
        if (siteOf(change) != siteOf(*maker)) standings[i] = Standing::OtherSite;
        // A borrower works on records of the trap he borrowed, not on others of that site.
        const Uuid member = memberOf(change.ref.stream);
        const auto keeper = m_keepers.find(change.site);
        const bool isAtHome = m_assigned.contains({member, change.site})
            || (keeper != m_keepers.end() && keeper->second == member) || change.kind == "site"
            || change.site.isNil();
        if (isAtHome || !isTrapWork(change.kind)) continue;
        const Uuid trap = trapIn(*maker);
        const bool isBorrowed = std::any_of(m_lendings.begin(), m_lendings.end(),
            [&](const Lending& lending) { return lending.member == member && lending.trap == trap; });
        if (!isBorrowed) standings[i] = Standing::NotYours;
    }
    return standings;
}

} // namespace duskrow::domain
