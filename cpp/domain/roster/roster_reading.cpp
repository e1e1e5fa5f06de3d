// SPDX-License-Identifier: MIT
#include "domain/roster/roster_reading.h"

#include <algorithm>

#include "domain/records/roster.h"
#include "domain/roster/claims.h"

namespace duskrow::domain {

namespace {

std::optional<std::int64_t> numberIn(const Folded& folded, const std::string& field)
{
    const auto found = folded.values.find(field);
    if (found == folded.values.end()) return std::nullopt;
    const auto* number = std::get_if<std::int64_t>(&found->second);
    return number ? std::optional(*number) : std::nullopt;
}

std::optional<LocalDay> dayIn(const Folded& folded, const std::string& field)
{
    const auto day = parseDay(textIn(folded, field));
    return day ? std::optional(*day) : std::nullopt;
}

std::optional<Role> roleIn(const Folded& folded)
{
    const auto* found = std::find(roleNames.begin(), roleNames.end(), textIn(folded, "role"));
    if (found == roleNames.end()) return std::nullopt;
    return static_cast<Role>(found - roleNames.begin());
}

bool isYes(const Folded& folded, const std::string& field)
{
    const auto found = folded.values.find(field);
    return found != folded.values.end() && found->second == Value{true};
}

std::optional<StreamId> streamIn(const Folded& folded)
{
    StreamId stream{};
    if (!parseHex(textIn(folded, "stream"), stream)) return std::nullopt;
    return stream;
}

PublicKey keyIn(const Folded& folded)
{
    PublicKey key{};
    if (!parseHex(textIn(folded, "key"), key)) return {};
    return key;
}

// Made without having seen anything of its record before.
bool isCreation(const Change& change)
{
    return std::all_of(change.fields.begin(), change.fields.end(),
        [](const auto& field) { return field.second.base.empty(); });
}

} // namespace

std::string textIn(const Folded& folded, const std::string& field)
{
    const auto found = folded.values.find(field);
    if (found == folded.values.end()) return {};
    const auto* text = std::get_if<std::string>(&found->second);
    return text ? *text : std::string();
}

Uuid idIn(const Folded& folded, const std::string& field)
{
    return parseUuid(textIn(folded, field)).value_or(Uuid{});
}

bool standsIn(const Folded& folded)
{
    return textIn(folded, "withdrawn").empty();
}

RosterReading::RosterReading(Roster& roster, std::span<const Change> changes) : m_roster(roster)
{
    std::set<ChangeRef> seen;
    for (const Change& change : changes) {
        if (!isRosterKind(change.kind)) continue;
        m_records[{change.kind, change.record}].push_back(change);
        seen.insert(change.ref);
    }
    m_roster.m_changes = static_cast<std::int64_t>(seen.size());
    m_followers = followersIn(m_records);
}

void RosterReading::read()
{
    readRoots();
    readCoordinators();
    const Counts counts = [this](const Change& change) { return isCoordinatorWord(change); };
    readMembers(counts);
    readInvitations(counts);
    readDevices(counts);
    readClaims();
    readFollowers();
    m_roster.m_isAlone = std::all_of(m_roster.m_devices.begin(), m_roster.m_devices.end(),
        [this](const auto& device) { return m_roster.m_founders.contains(device.first); });
    readKeepers();
    readLendings();
    readAdmissions();
}

void RosterReading::foldEach(
    std::string_view kind, const Counts& counts, const std::function<void(const Folded&)>& take) const
{
    for (auto record = m_records.lower_bound({std::string(kind), Uuid{}});
         record != m_records.end() && record->first.first == kind; ++record) {
        std::vector<Change> counted;
        std::copy_if(record->second.begin(), record->second.end(), std::back_inserter(counted), counts);
        if (!counted.empty()) take(fold(counted));
    }
}

RosterReading::Ends RosterReading::endsBy(const Counts& counts) const
{
    Ends ends;
    foldEach("device", counts, [&](const Folded& folded) {
        const auto stream = streamIn(folded);
        const auto last = numberIn(folded, "ended_after");
        if (stream && last) ends[*stream] = *last;
    });
    return ends;
}

// Whether a stream goes on from one of some, over streams that nobody ended.
bool RosterReading::goesOnFrom(const StreamId& stream, const std::set<StreamId>& some) const
{
    std::set<StreamId> passed;
    for (auto at = m_followers.find(stream); at != m_followers.end() && passed.insert(at->first).second;
         at = m_followers.find(at->second)) {
        if (m_rootEnds.contains(at->second)) return false;
        if (some.contains(at->second)) return true;
    }
    return false;
}

bool RosterReading::isRootWord(const Change& change) const
{
    if (!m_roots.contains(change.ref.stream)) return false;
    const auto end = m_rootEnds.find(change.ref.stream);
    return end == m_rootEnds.end() || change.ref.seq <= end->second;
}

void RosterReading::readRoots()
{
    const Counts isFounders = [this](const Change& c) { return m_roster.m_founders.contains(c.ref.stream); };
    m_roots = m_roster.m_founders;
    foldEach("device", isFounders, [&](const Folded& folded) {
        if (const auto stream = streamIn(folded); stream && isYes(folded, "root")) m_roots.insert(*stream);
    });
    m_rootEnds = endsBy(isFounders);
    // The word of another root ends a founder's device, unless the founder had ended that root.
    const Ends others = endsBy(
        [this](const Change& c) { return isRootWord(c) && !m_roster.m_founders.contains(c.ref.stream); });
    m_rootEnds.insert(others.begin(), others.end());
    const std::set<StreamId> named = m_roots;
    for (const auto& [stream, before] : m_followers)
        if (goesOnFrom(stream, named)) m_roots.insert(stream);
}

void RosterReading::readCoordinators()
{
    const Counts isRoots = [this](const Change& change) { return isRootWord(change); };
    foldEach("member", isRoots, [&](const Folded& folded) {
        if (standsIn(folded) && roleIn(folded) == Role::Coordinator) m_coordinators.insert(folded.record);
    });
    foldEach("device", isRoots, [&](const Folded& folded) {
        const auto stream = streamIn(folded);
        const Uuid member = idIn(folded, "member");
        if (!stream || member.isNil()) return;
        m_rootDevices[*stream] = member;
        if (m_coordinators.contains(member)) m_coordinatorStreams.insert(*stream);
    });
    // A coordinator's claim on an invitation that a root wrote.
    readInvitations(isRoots);
    for (const Claim& claim : rightfulClaims(claimsIn(m_records, m_roster), m_rootDevices))
        if (m_coordinators.contains(claim.member)) m_coordinatorStreams.insert(claim.stream);
    const std::set<StreamId> named = m_coordinatorStreams;
    for (const auto& [stream, before] : m_followers)
        if (goesOnFrom(stream, named)) m_coordinatorStreams.insert(stream);
    m_roster.m_invitations.clear();
}

// What only a root may say: who is a coordinator or a root, and what becomes of their devices.
bool RosterReading::isForRoots(const Change& change) const
{
    const auto member = change.fields.find("member");
    const auto* named =
        member == change.fields.end() ? nullptr : std::get_if<std::string>(&member->second.value);
    if (named && m_coordinators.contains(parseUuid(*named).value_or(Uuid{}))) return true;
    if (change.kind == "member") {
        const auto role = change.fields.find("role");
        const bool raises = role != change.fields.end() && role->second.value == Value{"coordinator"};
        return raises || m_coordinators.contains(change.record);
    }
    if (change.kind != "device") return false;
    if (change.fields.contains("root")) return true;
    const auto isIt = [&](const StreamId& stream) {
        return deviceId(m_roster.m_programme, stream) == change.record;
    };
    return std::any_of(m_roots.begin(), m_roots.end(), isIt)
        || std::any_of(m_coordinatorStreams.begin(), m_coordinatorStreams.end(), isIt);
}

bool RosterReading::isCoordinatorWord(const Change& change) const
{
    if (isRootWord(change)) return true;
    if (!m_coordinatorStreams.contains(change.ref.stream) || isForRoots(change)) return false;
    const auto end = m_rootEnds.find(change.ref.stream);
    return end == m_rootEnds.end() || change.ref.seq <= end->second;
}

void RosterReading::readMembers(const Counts& counts)
{
    foldEach("member", counts, [&](const Folded& folded) {
        if (!standsIn(folded)) return;
        m_roster.m_members[folded.record] = {
            textIn(folded, "name"), roleIn(folded), dayIn(folded, "until_day")};
    });
}

void RosterReading::readInvitations(const Counts& counts)
{
    foldEach("invitation", counts, [&](const Folded& folded) {
        if (!standsIn(folded)) return;
        m_roster.m_invitations[folded.record] = {
            folded.record, idIn(folded, "member"), keyIn(folded), dayIn(folded, "until_day"), false};
    });
}

void RosterReading::readDevices(const Counts& counts)
{
    foldEach("device", counts, [&](const Folded& folded) {
        const auto stream = streamIn(folded);
        if (!stream || !standsIn(folded)) return;
        m_roster.m_devices[*stream] = {*stream, keyIn(folded), idIn(folded, "member"),
            textIn(folded, "label"), m_roots.contains(*stream), true, numberIn(folded, "ended_after")};
    });
    for (const StreamId& founder : m_roster.m_founders) {
        EnrolledDevice& device = m_roster.m_devices[founder];
        device.stream = founder;
        device.isRoot = device.isConfirmed = true;
        if (const auto end = m_rootEnds.find(founder); end != m_rootEnds.end())
            device.endedAfter = end->second;
        // Who made the programme signs what he writes: his name stands in his changes.
        for (const auto& [key, changes] : m_records)
            for (const Change& change : changes)
                if (device.member.isNil() && change.ref.stream == founder) device.member = change.author;
    }
}

void RosterReading::readClaims()
{
    std::map<StreamId, Uuid> confirmed;
    for (const auto& [stream, device] : m_roster.m_devices)
        if (!device.member.isNil()) confirmed[stream] = device.member;
    const std::vector<Claim> claims = claimsIn(m_records, m_roster);
    for (const Claim& claim : claims) m_roster.m_invitations.at(claim.invitation).isClaimed = true;
    for (const Claim& claim : rightfulClaims(claims, confirmed)) {
        EnrolledDevice& device = m_roster.m_devices[claim.stream];
        device.stream = claim.stream;
        device.key = claim.key;
        if (device.label.empty()) device.label = claim.label;
        if (device.member.isNil()) device.member = claim.member;
    }
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

void RosterReading::readKeepers()
{
    const Counts counts = [this](const Change& change) { return isCoordinatorWord(change); };
    // The claim of the lowest stream goes first: streams are visited in falling order.
    for (const auto& [key, changes] : m_records) {
        if (key.first != "site") continue;
        std::map<StreamId, Uuid, std::greater<>> makers;
        for (const Change& change : changes) {
            const auto device = m_roster.m_devices.find(change.ref.stream);
            if (device == m_roster.m_devices.end() || !isCreation(change)) continue;
            if (device->second.endedAfter && change.ref.seq > *device->second.endedAfter) continue;
            makers[change.ref.stream] = device->second.member;
        }
        for (const auto& [stream, member] : makers) m_roster.m_keepers[key.second] = member;
    }
    foldEach("site", counts, [&](const Folded& folded) {
        if (const Uuid keeper = idIn(folded, "keeper"); !keeper.isNil())
            m_roster.m_keepers[folded.record] = keeper;
    });
    foldEach("assignment", counts, [&](const Folded& folded) {
        if (standsIn(folded)) m_roster.m_assigned.insert({idIn(folded, "member"), idIn(folded, "site")});
    });
}

void RosterReading::readLendings()
{
    const Counts counts = [this](const Change& change) {
        if (isCoordinatorWord(change)) return true;
        const auto keeper = m_roster.m_keepers.find(change.site);
        return keeper != m_roster.m_keepers.end() && keeper->second == m_roster.memberOf(change.ref.stream);
    };
    foldEach("loan", counts, [&](const Folded& folded) {
        const Uuid member = idIn(folded, "member");
        if (!standsIn(folded) || member.isNil()) return;
        m_roster.m_lendings.push_back({idIn(folded, "trap"), folded.site, member, dayIn(folded, "from_day"),
            dayIn(folded, "until_day")});
    });
}

void RosterReading::readAdmissions()
{
    const Counts counts = [this](const Change& change) { return isCoordinatorWord(change); };
    foldEach("admission", counts, [&](const Folded& folded) {
        const auto ref = parseRef(textIn(folded, "change"));
        if (ref && standsIn(folded)) m_roster.m_admitted.insert(*ref);
    });
}

Roster Roster::from(
    const Uuid& programme, const std::set<StreamId>& founders, std::span<const Change> changes)
{
    Roster roster;
    roster.m_programme = programme;
    roster.m_founders = founders;
    RosterReading(roster, changes).read();
    return roster;
}

} // namespace duskrow::domain
