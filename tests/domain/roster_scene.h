// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <random>
#include <sodium.h>

#include "domain/records/roster.h"
#include "domain/records/trap.h"
#include "domain/roster/roster.h"

namespace duskrow::tests {

// A programme in which people and their devices speak one after the other. Devices, members, sites and traps
// are named by words; what is said counts or not as the roster finds.
class RosterScene {
public:
    using Fields = domain::ByName<domain::FieldSet>;

    struct Keys {
        domain::PublicKey key{};
        std::array<std::uint8_t, 64> secret{};
    };

    static domain::Uuid programme() { return id("the programme"); }
    static domain::Uuid id(const std::string& word)
    {
        const std::array<std::string, 2> parts{"roster scene", word};
        return word.empty() ? domain::Uuid{} : domain::uuidFromName(parts);
    }
    static std::string text(const std::string& word) { return domain::formatUuid(id(word)); }

    static Keys keyOf(const std::string& word)
    {
        const auto seed = domain::hashOf("seed of " + word);
        Keys pair;
        crypto_sign_seed_keypair(pair.key.data(), pair.secret.data(), seed.data());
        return pair;
    }
    static domain::StreamId stream(const std::string& device)
    {
        return domain::streamOf(keyOf(device).key, programme());
    }
    static domain::Uuid deviceOf(const std::string& device)
    {
        return domain::deviceId(programme(), stream(device));
    }

    // A change by a device, with the next number of its stream; not yet among those of the scene.
    domain::Change change(const std::string& device, const std::string& kind, const domain::Uuid& record,
        const std::string& site, Fields fields)
    {
        domain::Change made;
        made.programme = programme();
        made.ref = {stream(device), ++m_seq[device]};
        made.author = id("author of " + device);
        made.kind = kind;
        made.record = record;
        made.site = id(site);
        made.at = domain::Instant{day(6, 15).time_since_epoch() + std::chrono::hours{18}};
        made.fields = std::move(fields);
        return made;
    }
    domain::Change says(const std::string& device, const std::string& kind, const domain::Uuid& record,
        const std::string& site, Fields fields)
    {
        m_changes.push_back(change(device, kind, record, site, std::move(fields)));
        return m_changes.back();
    }

    domain::ChangeRef member(const std::string& by, const std::string& name, const std::string& role)
    {
        return says(by, "member", id(name), "", {{"name", {name, {}}}, {"role", {role, {}}}}).ref;
    }
    domain::ChangeRef device(const std::string& by, const std::string& device, const std::string& member)
    {
        return says(by, "device", deviceOf(device), "",
            {{"stream", {domain::formatHex(stream(device)), {}}}, {"member", {text(member), {}}}})
            .ref;
    }
    domain::ChangeRef root(const std::string& by, const std::string& device, bool isRoot = true)
    {
        return says(by, "device", deviceOf(device), "",
            {{"stream", {domain::formatHex(stream(device)), {}}}, {"root", {isRoot, {}}}})
            .ref;
    }
    // Takes a record back in view of all that was said of it.
    domain::ChangeRef withdraws(const std::string& by, const std::string& kind, const domain::Uuid& record,
        const std::string& site = "")
    {
        std::vector<domain::ChangeRef> saw;
        for (const domain::Change& said : m_changes)
            if (said.record == record) saw.push_back(said.ref);
        says(by, kind, record, site, {{"withdrawn", {std::string("a mistake"), {}}}});
        m_changes.back().saw = saw;
        return m_changes.back().ref;
    }
    domain::ChangeRef site(const std::string& by, const std::string& name)
    {
        return says(by, "site", id(name), name, {{"season", {text("season"), {}}}, {"name", {name, {}}}}).ref;
    }
    domain::ChangeRef assigns(const std::string& by, const std::string& member, const std::string& site)
    {
        return says(by, "assignment", domain::assignmentId(programme(), id(member), id(site)), site,
            {{"member", {text(member), {}}}, {"site", {text(site), {}}}})
            .ref;
    }
    domain::ChangeRef lends(const std::string& by, const std::string& trap, const std::string& site,
        const std::string& member, const std::string& from, const std::string& until)
    {
        return says(by, "loan", id("loan of " + trap), site,
            {{"trap", {text(trap), {}}}, {"member", {text(member), {}}}, {"from_day", {from, {}}},
                {"until_day", {until, {}}}})
            .ref;
    }
    domain::ChangeRef invites(const std::string& by, const std::string& member, const std::string& word,
        const std::string& until = "2026-07-31")
    {
        return says(by, "invitation", id("invitation " + word), "",
            {{"member", {text(member), {}}}, {"key", {domain::formatHex(keyOf(word).key), {}}},
                {"until_day", {until, {}}}})
            .ref;
    }
    // The fields of a claim by a device. The proof is for `programme` and `of`.
    static Fields claimFields(const std::string& device, const std::string& word, const domain::StreamId& of,
        const domain::Uuid& programme)
    {
        const std::string message = domain::claimMessage(programme, of);
        domain::Signature proof{};
        crypto_sign_detached(proof.data(), nullptr, reinterpret_cast<const unsigned char*>(message.data()),
            message.size(), keyOf(word).secret.data());
        return {{"stream", {domain::formatHex(stream(device)), {}}},
            {"key", {domain::formatHex(keyOf(device).key), {}}}, {"label", {device, {}}},
            {"invitation", {text("invitation " + word), {}}}, {"proof", {domain::formatHex(proof), {}}}};
    }
    domain::ChangeRef claims(const std::string& device, const std::string& word)
    {
        return says(
            device, "device", deviceOf(device), "", claimFields(device, word, stream(device), programme()))
            .ref;
    }
    domain::ChangeRef ends(const std::string& by, const std::string& device, std::int64_t after)
    {
        return says(by, "device", deviceOf(device), "", {{"ended_after", {after, {}}}}).ref;
    }

    [[nodiscard]] domain::Roster roster() const
    {
        return domain::Roster::from(programme(), {stream("founder")}, m_changes);
    }
    [[nodiscard]] std::vector<domain::Change>& changes() { return m_changes; }
    static domain::LocalDay day(unsigned month, unsigned day) { return domain::dayOf(2026, month, day); }

private:
    std::vector<domain::Change> m_changes;
    std::map<std::string, std::int64_t> m_seq;
};

// Everything a roster answers, as text: equal texts are equal rosters.
inline std::string shown(const domain::Roster& roster)
{
    using namespace domain;
    std::string all = roster.isAlone() ? "alone\n" : "";
    for (const auto& [stream, device] : roster.devices())
        all += formatHex(stream) + ' ' + formatHex(device.key) + ' ' + device.label
            + (device.isConfirmed ? " confirmed " : " ") + roster.rightsOf(stream) + " reads "
            + roster.scopeOf(stream) + '\n';
    for (const auto& [id, member] : roster.members())
        all += formatUuid(id) + ' ' + member.name + ' '
            + std::to_string(member.role ? static_cast<int>(*member.role) : -1) + '\n';
    for (const auto& [id, invitation] : roster.invitations())
        all += formatUuid(id) + ' ' + formatUuid(invitation.member) + ' ' + formatHex(invitation.key)
            + (invitation.isClaimed ? " claimed\n" : "\n");
    return all + std::to_string(roster.changes());
}

} // namespace duskrow::tests
