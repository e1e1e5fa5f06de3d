// SPDX-License-Identifier: MIT
#include "sim/naive_roster.h"

#include <algorithm>

#include "domain/records/roster.h"

namespace duskrow::sim {

using namespace duskrow::domain;

namespace {

std::string textOfValue(const Value& value)
{
    const auto* found = std::get_if<std::string>(&value);
    return found != nullptr ? *found : std::string();
}

Uuid id(const Value& value)
{
    return idOf(value);
}

Value said(const Change& change, const std::string& field)
{
    const auto found = change.fields.find(field);
    return found == change.fields.end() ? Value{} : found->second.value;
}

bool isAmong(const std::string& word, std::initializer_list<const char*> words)
{
    return std::any_of(words.begin(), words.end(), [&](const char* one) { return word == one; });
}

} // namespace

Uuid idOf(const Value& value)
{
    return parseUuid(textOfValue(value)).value_or(Uuid{});
}

bool stands(const Changes& ofRecord, const Word& heard)
{
    if (textOfValue(pick(ofRecord, "withdrawn", heard)).empty()) return true;
    Changes listened;
    for (const Change* change : ofRecord)
        if (heard(*change)) listened.push_back(change);
    std::set<ChangeRef> seen;
    for (const Change* head : headsOf(listened, "withdrawn")) {
        seen.insert(head->ref);
        seen.insert(head->saw.begin(), head->saw.end());
    }
    for (const Change* change : listened)
        for (const auto& [field, set] : change->fields)
            for (const Change* head : headsOf(listened, field))
                if (!seen.contains(head->ref)) return true;
    return false;
}

Changes headsOf(const Changes& ofRecord, const std::string& field)
{
    Changes heads;
    for (const Change* a : ofRecord) {
        if (!a->fields.contains(field)) continue;
        bool isCited = false;
        for (const Change* b : ofRecord) {
            const auto set = b->fields.find(field);
            if (b == a || set == b->fields.end()) continue;
            for (const ChangeRef& ref : set->second.base) isCited = isCited || ref == a->ref;
        }
        if (!isCited) heads.push_back(a);
    }
    return heads;
}

Value pick(const Changes& ofRecord, const std::string& field, const Word& heard)
{
    Changes listened;
    for (const Change* change : ofRecord)
        if (heard(*change)) listened.push_back(change);
    Value best;
    for (const Change* head : headsOf(listened, field)) best = std::max(best, said(*head, field));
    return best;
}

bool isMaking(const Change& change)
{
    for (const auto& [name, set] : change.fields)
        if (!set.base.empty()) return false;
    const RecordKind* kind = findKind(change.kind);
    if (kind == nullptr) return true;
    for (const Field& field : kind->fields)
        if (field.type == FieldType::Id) return change.fields.contains(std::string(field.name));
    return true;
}

NaiveRoster::NaiveRoster(
    const Uuid& programme, const std::set<StreamId>& founders, const Changes& all, const StreamId& own)
    : m_programme(programme), m_founders(founders), m_own(own)
{
    const auto name = [&](const StreamId& stream) { m_named[deviceId(programme, stream)] = stream; };
    for (const StreamId& founder : founders) name(founder);
    for (const Change* change : all) {
        if (!isAmong(
                change->kind, {"member", "device", "invitation", "assignment", "site", "loan", "admission"}))
            continue;
        m_records[change->kind][change->record].push_back(change);
        name(change->ref.stream);
        StreamId stream{};
        if (change->kind == "device" && parseHex(textOfValue(said(*change, "stream")), stream)) name(stream);
    }
    readFollowers();
    readRoots();
    readCoordinators();
    readWordsForRoots();
    readMembers();
    readDevices();
    readSites();
    readLoans();
    for (const auto& [record, changes] : of("admission")) {
        const auto word = [this](const Change& c) { return isWord(c); };
        const auto ref = parseRef(textOfValue(pick(changes, "change", word)));
        if (ref && stands(changes, word)) m_admitted.insert(*ref);
    }
}

const NaiveRoster::Records& NaiveRoster::of(const std::string& kind) const
{
    static const Records none;
    const auto found = m_records.find(kind);
    return found == m_records.end() ? none : found->second;
}

std::optional<StreamId> NaiveRoster::streamOf(const Uuid& device) const
{
    const auto found = m_named.find(device);
    return found == m_named.end() ? std::nullopt : std::optional(found->second);
}

void NaiveRoster::readFollowers()
{
    for (const auto& [record, changes] : of("device"))
        for (const Change* change : changes) {
            PublicKey key{};
            Signature proof{};
            if (!parseHex(textOfValue(said(*change, "follows_key")), key)) continue;
            if (!parseHex(textOfValue(said(*change, "proof")), proof)) continue;
            if (isSignedBy(key, claimMessage(change->programme, change->ref.stream), proof))
                m_followers[change->ref.stream] = domain::streamOf(key, change->programme);
        }
}

bool NaiveRoster::goesOnFromOneOf(StreamId stream, const std::set<StreamId>& some) const
{
    for (std::size_t steps = 0; steps <= m_followers.size() && m_followers.contains(stream); ++steps) {
        stream = m_followers.at(stream);
        if (m_rootEnds.contains(stream)) return false;
        if (some.contains(stream)) return true;
    }
    return false;
}

bool NaiveRoster::isRootWord(const Change& change) const
{
    if (!m_roots.contains(change.ref.stream)) return false;
    const auto end = m_rootEnds.find(change.ref.stream);
    return end == m_rootEnds.end() || change.ref.seq <= end->second;
}

// The founding stream names roots; roots end each other, but the founding stream only by one whom it had not
// ended.
void NaiveRoster::readRoots()
{
    const Word byFounder = [this](const Change& c) { return m_founders.contains(c.ref.stream); };
    m_roots = m_founders;
    std::map<StreamId, std::int64_t> ended;
    for (const auto& [record, changes] : of("device")) {
        const auto stream = streamOf(record);
        if (!stream) continue;
        if (pick(changes, "root", byFounder) == Value{true} && stands(changes, byFounder))
            m_roots.insert(*stream);
        const Value end = pick(changes, "ended_after", byFounder);
        if (const auto* last = std::get_if<std::int64_t>(&end)) ended[*stream] = *last;
    }
    m_rootEnds = ended;
    const auto heard = m_roots;
    const Word byOther = [&](const Change& c) {
        if (!heard.contains(c.ref.stream) || m_founders.contains(c.ref.stream)) return false;
        const auto end = ended.find(c.ref.stream);
        return end == ended.end() || c.ref.seq <= end->second;
    };
    const Word byUnended = [&](const Change& c) { return byOther(c) && !ended.contains(c.ref.stream); };
    for (const auto& [record, changes] : of("device")) {
        const auto stream = streamOf(record);
        if (!stream || ended.contains(*stream)) continue;
        const Value end = pick(changes, "ended_after", m_founders.contains(*stream) ? byUnended : byOther);
        if (const auto* last = std::get_if<std::int64_t>(&end)) m_rootEnds[*stream] = *last;
    }
    for (const auto& [stream, before] : m_followers)
        if (goesOnFromOneOf(stream, heard)) m_roots.insert(stream);
}

std::set<NaiveRoster::Claim> NaiveRoster::claims(const Word& heard) const
{
    std::set<Claim> all;
    for (const auto& [record, changes] : of("device"))
        for (const Change* change : changes) {
            const Uuid invitation = id(said(*change, "invitation"));
            const auto found = of("invitation").find(invitation);
            if (found == of("invitation").end() || !isHeard(found->second, heard)) continue;
            if (!stands(found->second, heard)) continue;
            const std::string until = textOfValue(pick(found->second, "until_day", heard));
            if (!until.empty() && formatDay(dayOf(change->at, change->offset)) > until) continue;
            PublicKey key{};
            PublicKey invited{};
            Signature proof{};
            const bool isProven = parseHex(textOfValue(said(*change, "key")), key)
                && parseHex(textOfValue(said(*change, "proof")), proof)
                && parseHex(textOfValue(pick(found->second, "key", heard)), invited)
                && domain::streamOf(key, m_programme) == change->ref.stream
                && isSignedBy(invited, claimMessage(m_programme, change->ref.stream), proof);
            if (isProven)
                all.insert({invitation, id(pick(found->second, "member", heard)), change->ref.stream});
        }
    return all;
}

void NaiveRoster::readCoordinators()
{
    const Word byRoot = [this](const Change& c) { return isRootWord(c); };
    for (const auto& [record, changes] : of("member"))
        if (stands(changes, byRoot) && textOfValue(pick(changes, "role", byRoot)) == "coordinator")
            m_coordinators[record] = textOfValue(pick(changes, "until_day", byRoot));
    std::map<StreamId, Uuid> confirmed;
    for (const auto& [record, changes] : of("device")) {
        const auto stream = streamOf(record);
        const Uuid member = id(pick(changes, "member", byRoot));
        if (!stream || member.isNil() || !stands(changes, byRoot)) continue;
        confirmed[*stream] = member;
        if (m_coordinators.contains(member)) m_coordinatorStreams[*stream] = member;
    }
    const auto all = claims(byRoot);
    for (const Claim& claim : all) {
        const auto rivals = [&](const Claim& other) { return other.invitation == claim.invitation; };
        const auto found = confirmed.find(claim.stream);
        const bool isSure = found != confirmed.end() && found->second == claim.member;
        if ((isSure || std::count_if(all.begin(), all.end(), rivals) == 1)
            && m_coordinators.contains(claim.member))
            m_coordinatorStreams[claim.stream] = claim.member;
    }
    const auto named = m_coordinatorStreams;
    std::set<StreamId> streams;
    for (const auto& [stream, member] : named) streams.insert(stream);
    for (const auto& [stream, before] : m_followers) {
        if (!goesOnFromOneOf(stream, streams)) continue;
        StreamId from = before;
        while (!named.contains(from)) from = m_followers.at(from);
        m_coordinatorStreams[stream] = named.at(from);
    }
}

void NaiveRoster::readMembers()
{
    const Word word = [this](const Change& c) { return isWord(c); };
    for (const auto& [record, changes] : of("member")) {
        const std::string until = textOfValue(pick(changes, "until_day", word));
        if (isHeard(changes, word) && stands(changes, word) && !until.empty()) m_until[record] = until;
    }
}

void NaiveRoster::readDevices()
{
    const Word word = [this](const Change& c) { return isWord(c); };
    std::set<StreamId> takenBack;
    std::map<StreamId, Uuid> confirmed;
    for (const auto& [record, changes] : of("device")) {
        const auto stream = streamOf(record);
        if (!stream || !isHeard(changes, word)) continue;
        if (!stands(changes, word) && !m_roots.contains(*stream)) {
            takenBack.insert(*stream);
            continue;
        }
        Device& device = m_devices[*stream];
        device.member = id(pick(changes, "member", word));
        const Value end = pick(changes, "ended_after", word);
        if (const auto* last = std::get_if<std::int64_t>(&end)) device.end = *last;
    }
    for (const StreamId& root : m_roots) {
        Device& device = m_devices[root];
        const auto end = m_rootEnds.find(root);
        device.end = end == m_rootEnds.end() ? std::nullopt : std::optional(end->second);
    }
    // Who made the programme is the author of his own first word on it.
    for (const StreamId& founder : m_founders) {
        const Change* first = nullptr;
        for (const auto& [kind, records] : m_records)
            for (const auto& [record, changes] : records)
                for (const Change* c : changes)
                    if (c->ref.stream == founder && (first == nullptr || c->ref < first->ref)) first = c;
        if (m_devices[founder].member.isNil() && first != nullptr) m_devices[founder].member = first->author;
    }
    for (const auto& [stream, device] : m_devices)
        if (!device.member.isNil()) confirmed[stream] = device.member;
    std::set<Claim> all = claims(word);
    std::erase_if(all, [&](const Claim& claim) { return takenBack.contains(claim.stream); });
    for (const Claim& claim : all) {
        const auto rivals = [&](const Claim& other) { return other.invitation == claim.invitation; };
        const auto found = confirmed.find(claim.stream);
        const bool isSure = found != confirmed.end() && found->second == claim.member;
        if (!isSure && std::count_if(all.begin(), all.end(), rivals) != 1) continue;
        Device& device = m_devices[claim.stream];
        if (device.member.isNil()) device.member = claim.member;
    }
    for (std::size_t round = 0; round < m_followers.size(); ++round)
        for (const auto& [stream, before] : m_followers) {
            const auto old = m_devices.find(before);
            if (old != m_devices.end() && !old->second.end && !m_devices.contains(stream))
                m_devices[stream] = old->second;
        }
}

void NaiveRoster::readSites()
{
    const Word word = [this](const Change& c) { return isWord(c); };
    for (const auto& [record, changes] : of("assignment")) {
        const Uuid member = id(pick(changes, "member", word));
        const Uuid site = id(pick(changes, "site", word));
        if (stands(changes, word) && record == assignmentId(m_programme, member, site))
            m_assigned.insert({member, site});
    }
    for (const auto& [site, changes] : of("site")) {
        const Uuid chosen = id(pick(changes, "keeper", word));
        Changes makers;
        for (const Change* change : changes)
            if (m_devices.contains(change->ref.stream) && isMaking(*change)) {
                const auto& end = m_devices.at(change->ref.stream).end;
                if (!end || change->ref.seq <= *end) makers.push_back(change);
            }
        std::sort(
            makers.begin(), makers.end(), [](const Change* a, const Change* b) { return a->ref < b->ref; });
        Uuid maker;
        for (const Change* change : makers) {
            const Uuid member = memberOf(change->ref.stream);
            if (maker.isNil() && (member == chosen || m_assigned.contains({member, site}))) maker = member;
        }
        for (const Change* change : makers)
            if (maker.isNil()) maker = memberOf(change->ref.stream);
        if (!maker.isNil()) m_homes.insert({maker, site});
        m_keeper[site] = chosen.isNil() ? maker : chosen;
    }
    for (const auto& [site, keeper] : m_keeper) m_homes.insert({keeper, site});
    for (const auto& assigned : m_assigned) m_homes.insert(assigned);
}

void NaiveRoster::readLoans()
{
    for (const auto& [record, changes] : of("loan")) {
        std::set<Uuid> sites;
        for (const Change* change : changes) sites.insert(change->site);
        for (const Uuid& site : sites) {
            const Word word = [&](const Change& c) {
                return c.site == site && !site.isNil() && (isWord(c) || isHome(memberOf(c.ref.stream), site));
            };
            if (!isHeard(changes, word) || !stands(changes, word)) continue;
            const Loan loan{id(pick(changes, "trap", word)), site, id(pick(changes, "member", word)),
                textOfValue(pick(changes, "from_day", word)), textOfValue(pick(changes, "until_day", word))};
            if (!loan.member.isNil() && !loan.trap.isNil()) m_loans.push_back(loan);
        }
    }
}

} // namespace duskrow::sim
