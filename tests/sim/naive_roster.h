// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <vector>

#include "domain/log/change.h"

// Who may what, read naively from sync/FORMAT.md section 5: every question goes through all changes again.
namespace duskrow::sim {

using Changes = std::vector<const domain::Change*>;
using domain::Change;
using domain::StreamId;
using domain::Uuid;
using Word = std::function<bool(const Change&)>; // whose word is heard

inline bool isHeard(const Changes& ofRecord, const Word& heard)
{
    return std::any_of(ofRecord.begin(), ofRecord.end(), [&](const Change* c) { return heard(*c); });
}
// Was not withdrawn, or by one who had not seen all that still stands.
bool stands(const Changes& ofRecord, const Word& heard);
// The id that a value holds, nil when it holds none.
Uuid idOf(const domain::Value& value);
// The changes that set a field of a record and that no other of these changes cites there, pair by pair.
Changes headsOf(const Changes& ofRecord, const std::string& field);
// The value of a field when only some are heard: of several heads the highest.
domain::Value pick(const Changes& ofRecord, const std::string& field, const Word& heard);

class NaiveRoster {
public:
    // own  the stream of the device that looks: it counts there though nobody let it in yet
    NaiveRoster(
        const Uuid& programme, const std::set<StreamId>& founders, const Changes& all, const StreamId& own);

    // Whether a change counts; `maker` made its record, where somebody did.
    [[nodiscard]] bool counts(const Change& change, const Change* maker) const;
    // Of the changes of one record, those that count.
    [[nodiscard]] Changes counting(const Changes& ofRecord) const;
    [[nodiscard]] bool isCoordinator(const StreamId& stream) const;
    [[nodiscard]] bool mayRead(const StreamId& reader, const Change& change) const;
    [[nodiscard]] bool isEnrolled(const StreamId& stream) const { return m_devices.contains(stream); }
    [[nodiscard]] bool isRoot(const StreamId& stream) const { return m_roots.contains(stream); }
    [[nodiscard]] bool isEnded(const StreamId& stream) const;
    // Nobody else takes part.
    [[nodiscard]] bool isOnly(const std::set<StreamId>& these) const;
    [[nodiscard]] Uuid memberOf(const StreamId& stream) const;

private:
    struct Device {
        Uuid member;
        std::optional<std::int64_t> end;
    };
    struct Loan {
        Uuid trap;
        Uuid site;
        Uuid member;
        std::string from;
        std::string until;
    };
    struct Claim {
        Uuid invitation;
        Uuid member;
        StreamId stream;
        bool operator<(const Claim& other) const
        {
            return std::tie(invitation, stream) < std::tie(other.invitation, other.stream);
        }
    };
    using Records = std::map<Uuid, Changes>;

    [[nodiscard]] const Records& of(const std::string& kind) const;
    void readFollowers();
    [[nodiscard]] bool goesOnFromOneOf(StreamId stream, const std::set<StreamId>& some) const;
    void readRoots();
    void readCoordinators();
    void readWordsForRoots();
    void readMembers();
    void readDevices();
    void readSites();
    void readLoans();
    [[nodiscard]] std::set<Claim> claims(const Word& heard) const;
    [[nodiscard]] std::optional<StreamId> streamOf(const Uuid& device) const;
    [[nodiscard]] bool isRootWord(const Change& change) const;
    [[nodiscard]] bool hasRootAgreed(const Change& change, const std::string& field) const;
    [[nodiscard]] bool says(const Change& change, std::initializer_list<const char*> fields) const;
    [[nodiscard]] bool isForRoots(const Change& change) const;
    [[nodiscard]] bool isWord(const Change& change) const; // of a coordinator
    [[nodiscard]] bool hasMemberEnded(const Uuid& member, const Change& change) const;
    [[nodiscard]] bool isHome(const Uuid& member, const Uuid& site) const;
    [[nodiscard]] bool isLent(const Uuid& member, const Change& change, const Change* maker) const;
    [[nodiscard]] bool settlesForOthers(const Change& change) const;
    [[nodiscard]] bool isOwnClaim(const Change& change) const;

    Uuid m_programme;
    std::set<StreamId> m_founders;
    StreamId m_own{};
    std::map<StreamId, StreamId> m_followers; // new stream, the one it goes on from
    std::map<std::string, Records> m_records;
    std::map<Uuid, StreamId> m_named; // record of a device, and its stream
    std::set<StreamId> m_roots;
    std::map<StreamId, std::int64_t> m_rootEnds;
    std::map<Uuid, std::string> m_coordinators; // and their last day
    std::map<StreamId, Uuid> m_coordinatorStreams;
    std::set<domain::ChangeRef> m_forRoots;
    std::map<Uuid, std::string> m_until; // last days of members
    std::map<StreamId, Device> m_devices;
    std::map<Uuid, Uuid> m_keeper;
    std::set<std::pair<Uuid, Uuid>> m_homes; // member, site
    std::set<std::pair<Uuid, Uuid>> m_assigned;
    std::vector<Loan> m_loans;
    std::set<domain::ChangeRef> m_admitted;
};

// Whether it makes its record: replaces nothing, and says what the record belongs to.
bool isMaking(const Change& change);

} // namespace duskrow::sim
