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

PublicKey keyIn(const Folded& folded)
{
    PublicKey key{};
    if (!parseHex(textIn(folded, "key"), key)) return {};
    return key;
}

// In the order of references, each once: nothing may hang on the order in which they came.
void putInOrder(std::vector<Change>& changes)
{
    const auto before = [](const Change& a, const Change& b) {
        return a.ref != b.ref ? a.ref < b.ref : a != b && canonicalJson(a) < canonicalJson(b);
    };
    std::sort(changes.begin(), changes.end(), before);
    changes.erase(std::unique(changes.begin(), changes.end()), changes.end());
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

std::optional<LocalDay> dayIn(const Folded& folded, const std::string& field)
{
    const auto day = parseDay(textIn(folded, field));
    return day ? std::optional(*day) : std::nullopt;
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
    for (auto& [key, ofRecord] : m_records) putInOrder(ofRecord);
    nameDevices();
}

// Which stream the record of a device is about follows from its id alone: a word on it need not repeat the
// stream, and a record under another id is about nobody.
void RosterReading::nameDevices()
{
    const auto put = [&](const StreamId& stream) {
        m_streams[deviceId(m_roster.m_programme, stream)] = stream;
    };
    for (const StreamId& founder : m_roster.m_founders) put(founder);
    for (auto record = m_records.lower_bound({"device", Uuid{}});
         record != m_records.end() && record->first.first == "device"; ++record)
        for (const Change& change : record->second) {
            put(change.ref.stream);
            const auto said = change.fields.find("stream");
            const auto* text =
                said == change.fields.end() ? nullptr : std::get_if<std::string>(&said->second.value);
            StreamId stream{};
            if (text && parseHex(*text, stream)) put(stream);
        }
}

std::optional<StreamId> RosterReading::streamOfDevice(const Uuid& record) const
{
    const auto found = m_streams.find(record);
    return found == m_streams.end() ? std::nullopt : std::optional(found->second);
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
        const std::vector<Change>& all = record->second;
        if (std::all_of(all.begin(), all.end(), counts)) {
            take(fold(all));
            continue;
        }
        std::vector<Change> counted;
        std::copy_if(all.begin(), all.end(), std::back_inserter(counted), counts);
        if (!counted.empty()) take(fold(counted));
    }
}

RosterReading::Ends RosterReading::endsBy(const Counts& counts) const
{
    Ends ends;
    foldEach("device", counts, [&](const Folded& folded) {
        const auto stream = streamOfDevice(folded.record);
        const auto last = numberIn(folded, "ended_after");
        if (stream && last) ends[*stream] = *last;
    });
    return ends;
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
        const auto stream = streamOfDevice(folded.record);
        if (stream && standsIn(folded) && isYes(folded, "root")) m_roots.insert(*stream);
    });
    const Ends byFounders = endsBy(isFounders);
    m_rootEnds = byFounders;
    const auto isOthers = [this](const Change& c) {
        return isRootWord(c) && !m_roster.m_founders.contains(c.ref.stream);
    };
    for (const auto& [stream, last] : endsBy(isOthers))
        if (!m_roster.m_founders.contains(stream)) m_rootEnds.insert({stream, last});
    // A founder's device is not ended by the word of a root that a founder had ended, however early it was.
    const auto isUnended = [&](const Change& c) { return isOthers(c) && !byFounders.contains(c.ref.stream); };
    for (const auto& [stream, last] : endsBy(isUnended))
        if (m_roster.m_founders.contains(stream)) m_rootEnds.insert({stream, last});
    const std::set<StreamId> named = m_roots;
    for (const auto& [stream, before] : m_followers)
        if (goesOnFrom(stream, [&](const StreamId& other) { return named.contains(other); }))
            m_roots.insert(stream);
}

void RosterReading::readCoordinators()
{
    const Counts isRoots = [this](const Change& change) { return isRootWord(change); };
    foldEach("member", isRoots, [&](const Folded& folded) {
        if (standsIn(folded) && roleIn(folded) == Role::Coordinator)
            m_coordinators[folded.record] = dayIn(folded, "until_day");
    });
    foldEach("device", isRoots, [&](const Folded& folded) {
        const auto stream = streamOfDevice(folded.record);
        const Uuid member = idIn(folded, "member");
        if (!stream || member.isNil() || !standsIn(folded)) return;
        m_rootDevices[*stream] = member;
        if (m_coordinators.contains(member)) m_coordinatorStreams[*stream] = member;
    });
    // A coordinator's claim on an invitation that a root wrote.
    readInvitations(isRoots);
    for (const Claim& claim : rightfulClaims(claimsIn(m_records, m_roster), m_rootDevices))
        if (m_coordinators.contains(claim.member)) m_coordinatorStreams[claim.stream] = claim.member;
    for (const auto& [record, invitation] : m_roster.m_invitations)
        if (m_coordinators.contains(invitation.member)) m_coordinatorInvitations.insert(record);
    const auto named = m_coordinatorStreams;
    for (const auto& [stream, before] : m_followers)
        if (goesOnFrom(stream, [&](const StreamId& other) { return named.contains(other); }))
            m_coordinatorStreams[stream] = memberBefore(stream, named);
    m_roster.m_invitations.clear();
    for (const auto& [key, changes] : m_records)
        for (const Change& change : changes)
            if (m_coordinatorStreams.contains(change.ref.stream) && !m_roots.contains(change.ref.stream)
                && isForRoots(change))
                m_roster.m_forRoots.insert(change.ref);
}

// Whether a change sets one of these fields, and no root has said the same or answered it.
bool RosterReading::setsAnyOf(const Change& change, std::initializer_list<const char*> fields) const
{
    const auto& ofRecord = m_records.at({change.kind, change.record});
    return std::any_of(fields.begin(), fields.end(), [&](const char* field) {
        const auto said = change.fields.find(field);
        if (said == change.fields.end()) return false;
        return std::none_of(ofRecord.begin(), ofRecord.end(), [&](const Change& other) {
            const auto set = other.fields.find(field);
            if (set == other.fields.end() || !isRootWord(other)) return false;
            const auto& base = set->second.base;
            return set->second.value == said->second.value
                || std::find(base.begin(), base.end(), change.ref) != base.end();
        });
    });
}

// What only a root may say: who is a coordinator or a root, and what becomes of their devices.
bool RosterReading::isForRoots(const Change& change) const
{
    if (change.kind == "invitation") return m_coordinatorInvitations.contains(change.record);
    if (change.kind == "member") {
        const auto role = change.fields.find("role");
        const bool raises = role != change.fields.end() && role->second.value == Value{"coordinator"};
        return (raises && setsAnyOf(change, {"role"}))
            || (m_coordinators.contains(change.record)
                && setsAnyOf(change, {"role", "until_day", "withdrawn"}));
    }
    if (change.kind != "device") return false;
    if (change.fields.contains("root")) return true;
    const auto stream = streamOfDevice(change.record);
    if (!stream || !(m_roots.contains(*stream) || m_coordinatorStreams.contains(*stream))) return false;
    // The key that a device names as its own, as every claim does, is the one its stream is made of.
    const bool isOwn = *stream == change.ref.stream;
    return setsAnyOf(change, {"ended_after", "member", "withdrawn"})
        || (!isOwn && setsAnyOf(change, {"key"}));
}

bool RosterReading::isCoordinatorWord(const Change& change) const
{
    if (isRootWord(change)) return true;
    const auto stream = m_coordinatorStreams.find(change.ref.stream);
    if (stream == m_coordinatorStreams.end() || m_roots.contains(change.ref.stream)) return false;
    if (m_roster.m_forRoots.contains(change.ref)) return false;
    const auto& until = m_coordinators.at(stream->second);
    if (until && dayOf(change.at, change.offset) > *until) return false;
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
        const auto stream = streamOfDevice(folded.record);
        if (!stream) return;
        if (!standsIn(folded) && !m_roots.contains(*stream)) {
            m_takenBack.insert(*stream);
            return;
        }
        m_roster.m_devices[*stream] = {*stream, keyIn(folded), idIn(folded, "member"),
            textIn(folded, "label"), m_roots.contains(*stream), true, m_coordinatorStreams.contains(*stream),
            numberIn(folded, "ended_after")};
    });
    for (const StreamId& root : m_roots) {
        EnrolledDevice& device = m_roster.m_devices[root];
        device.stream = root;
        device.isRoot = device.isConfirmed = true;
        if (device.member.isNil() && m_roster.m_founders.contains(root)) device.member = authorOf(root);
    }
    for (auto& [stream, device] : m_roster.m_devices) {
        if (!device.isRoot) continue;
        const auto end = m_rootEnds.find(stream);
        device.endedAfter = end == m_rootEnds.end() ? std::nullopt : std::optional(end->second);
    }
}

// Who made the programme signs what he writes: his name stands in his first change.
Uuid RosterReading::authorOf(const StreamId& stream) const
{
    const Change* first = nullptr;
    for (const auto& [key, changes] : m_records)
        for (const Change& change : changes)
            if (change.ref.stream == stream && (!first || change.ref < first->ref)) first = &change;
    return first ? first->author : Uuid{};
}

void RosterReading::readClaims()
{
    std::map<StreamId, Uuid> confirmed;
    for (const auto& [stream, device] : m_roster.m_devices)
        if (!device.member.isNil()) confirmed[stream] = device.member;
    std::vector<Claim> claims = claimsIn(m_records, m_roster);
    std::erase_if(claims, [&](const Claim& claim) { return m_takenBack.contains(claim.stream); });
    for (const Claim& claim : claims) {
        m_roster.m_invitations.at(claim.invitation).isClaimed = true;
        m_roster.m_claimants.insert(claim.stream);
    }
    for (const Claim& claim : rightfulClaims(claims, confirmed)) {
        EnrolledDevice& device = m_roster.m_devices[claim.stream];
        device.stream = claim.stream;
        device.key = claim.key;
        device.isCoordinator = m_coordinatorStreams.contains(claim.stream);
        if (device.label.empty()) device.label = claim.label;
        if (device.member.isNil()) device.member = claim.member;
    }
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
