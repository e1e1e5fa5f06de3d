// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <set>
#include <span>

#include "domain/log/change.h"
#include "domain/records/programme.h"

namespace duskrow::domain {

// How a change stands with the roster. Everything but Counts is kept aside: stored, passed on, listed, left
// out.
enum class Standing {
    Counts,
    NotEnrolled, // its stream is no device of the programme
    Ended, // after the last change that counts of an ended device
    MemberEnded, // after the last day of its member
    NotYours, // names a site that is neither his nor lent to him
    OtherSite, // names another site than its record belongs to
    CoordinatorOnly,
    RootOnly,
    SettlingNotYours, // settles a difference between others
};

// Which kinds the roster comes from.
bool isRosterKind(std::string_view kind);

// Whether a change makes its record: it replaces nothing, and says what the record belongs to. Filling in a
// field that nobody had filled replaces nothing either, and makes nothing.
bool isCreation(const Change& change);

struct EnrolledDevice {
    StreamId stream{};
    PublicKey key{}; // all zero when only its stream is known
    Uuid member;
    std::string label;
    bool isRoot = false;
    bool isConfirmed = false; // by a coordinator, not by its own claim alone
    bool isCoordinator = false; // its member is one, and a root let this device in
    std::optional<std::int64_t> endedAfter;
};

struct EnrolledMember {
    std::string name;
    std::optional<Role> role;
    std::optional<LocalDay> until;
};

struct OpenInvitation {
    Uuid id;
    Uuid member;
    PublicKey key{};
    std::optional<LocalDay> until;
    bool isClaimed = false;
};

struct Lending {
    Uuid trap;
    Uuid site;
    Uuid member;
    std::optional<LocalDay> from;
    std::optional<LocalDay> until;
};

// Who may do what, as the changes to the roster say. A pure function of the set of changes.
class Roster {
public:
    // founders  the streams that made the programme: their word goes first
    // changes   all of the kinds of isRosterKind, in any order, repeats allowed
    static Roster from(
        const Uuid& programme, const std::set<StreamId>& founders, std::span<const Change> changes);

    // How the changes of one record stand, in their order.
    [[nodiscard]] std::vector<Standing> weigh(std::span<const Change* const> ofOneRecord) const;
    [[nodiscard]] std::vector<Standing> weigh(std::span<const Change> ofOneRecord) const;
    [[nodiscard]] Standing standing(const Change& change) const;

    [[nodiscard]] bool mayRead(const StreamId& reader, const Change& change) const;
    // Differs whenever how a change of a stream may stand differs.
    [[nodiscard]] std::string rightsOf(const StreamId& stream) const;
    // Whether a change of a stream that counted under an earlier roster may not count any more. When only
    // sites, loans or admissions came, or the stream itself did, none can.
    [[nodiscard]] bool mayCountLess(const Roster& before, const StreamId& stream) const;
    // Differs whenever what a stream may read differs.
    [[nodiscard]] std::string scopeOf(const StreamId& reader) const;

    // Whether segments of this stream are taken in at all: it is a device, or claims to be one with a proof.
    [[nodiscard]] bool isEnrolled(const StreamId& stream) const;
    [[nodiscard]] bool isCoordinator(const StreamId& stream) const; // or root
    [[nodiscard]] bool isRoot(const StreamId& stream) const;
    [[nodiscard]] bool countsAlways(const StreamId& stream) const; // a root that nobody ended
    [[nodiscard]] Uuid memberOf(const StreamId& stream) const; // nil when unknown
    [[nodiscard]] std::set<Uuid> sitesOf(const Uuid& member) const; // own and assigned

    [[nodiscard]] const std::set<StreamId>& founders() const { return m_founders; }
    [[nodiscard]] const std::map<StreamId, EnrolledDevice>& devices() const { return m_devices; }
    [[nodiscard]] const std::map<Uuid, EnrolledMember>& members() const { return m_members; }
    [[nodiscard]] const std::map<Uuid, OpenInvitation>& invitations() const { return m_invitations; }
    // On its own device a stream counts even before it is let in: nobody loses sight of what he entered.
    void countHere(const StreamId& own) { m_here = own; }

    // One person alone, no other device: everything counts.
    [[nodiscard]] bool isAlone() const { return m_isAlone; }
    [[nodiscard]] std::int64_t changes() const { return m_changes; }

private:
    friend class RosterReading;

    // `maker` made the record of the change, where that is known: trap and day stand there when the change
    // leaves them out.
    [[nodiscard]] Standing standing(const Change& change, const Change* maker) const;
    [[nodiscard]] Standing byRole(
        const Change& change, const EnrolledDevice& device, const Change* maker) const;
    [[nodiscard]] Standing atSite(const Change& change, const Uuid& member, const Change* maker) const;
    [[nodiscard]] bool isLentTo(const Uuid& member, const Change& change, const Change* maker) const;
    [[nodiscard]] bool isOwnDevice(const Change& change) const;
    // What a stream may do: where it stands, and one line for each thing that it was given.
    struct Rights {
        std::string place;
        std::set<std::string> given;
    };
    [[nodiscard]] Rights rights(const StreamId& stream) const;
    [[nodiscard]] bool isAtHome(const Uuid& member, const Uuid& site) const;
    [[nodiscard]] bool settlesOthers(const Change& change) const;

    Uuid m_programme;
    std::set<StreamId> m_founders;
    std::map<StreamId, EnrolledDevice> m_devices;
    std::map<Uuid, EnrolledMember> m_members;
    std::map<Uuid, OpenInvitation> m_invitations;
    std::set<StreamId> m_claimants; // by invitation, with a proof
    std::map<Uuid, Uuid> m_keepers; // of sites
    std::set<std::pair<Uuid, Uuid>> m_made; // member, site: what he wrote of it goes on counting
    std::set<std::pair<Uuid, Uuid>> m_assigned; // member, site
    std::vector<Lending> m_lendings;
    std::set<ChangeRef> m_admitted;
    std::set<ChangeRef> m_forRoots; // said by coordinators, and only a root may
    bool m_isAlone = true;
    std::optional<StreamId> m_here;
    std::int64_t m_changes = 0;
};

} // namespace duskrow::domain
