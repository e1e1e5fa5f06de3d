// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "domain/log/fold.h"
#include "domain/roster/roster.h"

namespace duskrow::domain {

// Works the roster out of its changes in rounds: the roots from the founders' word, the coordinators from the
// roots', all others from the coordinators', then whose sites are whose, and loans.
class RosterReading {
public:
    RosterReading(Roster& roster, std::span<const Change> changes);
    void read();

private:
    using Counts = std::function<bool(const Change&)>;
    using Ends = std::map<StreamId, std::int64_t>;

    void nameDevices();
    [[nodiscard]] std::optional<StreamId> streamOfDevice(const Uuid& record) const;

    void foldEach(
        std::string_view kind, const Counts& counts, const std::function<void(const Folded&)>& take) const;
    [[nodiscard]] Ends endsBy(const Counts& counts) const;
    [[nodiscard]] bool isRootWord(const Change& change) const;
    [[nodiscard]] bool isCoordinatorWord(const Change& change) const;
    [[nodiscard]] bool isForRoots(const Change& change) const;
    [[nodiscard]] bool setsAnyOf(const Change& change, std::initializer_list<const char*> fields) const;
    [[nodiscard]] Uuid authorOf(const StreamId& stream) const;
    [[nodiscard]] Uuid makerOf(
        const Uuid& site, const std::vector<Change>& changes, const Uuid& keeper) const;

    void readRoots();
    void readCoordinators();
    void readMembers(const Counts& counts);
    void readInvitations(const Counts& counts);
    void readDevices(const Counts& counts);
    void readClaims();
    void readKeepers();
    void readLendings();
    void readAdmissions();

    [[nodiscard]] bool goesOnFrom(
        const StreamId& stream, const std::function<bool(const StreamId&)>& isOne) const;
    [[nodiscard]] Uuid memberBefore(StreamId stream, const std::map<StreamId, Uuid>& members) const;
    void readFollowers();

    Roster& m_roster;
    std::map<std::pair<std::string, Uuid>, std::vector<Change>> m_records;
    std::map<StreamId, StreamId> m_followers; // new stream, the one it goes on from
    std::map<Uuid, StreamId> m_streams; // by the record of the device
    std::set<StreamId> m_roots;
    Ends m_rootEnds;
    std::map<Uuid, std::optional<LocalDay>> m_coordinators; // members and their last day, by the roots' word
    std::map<StreamId, Uuid> m_rootDevices; // devices and their members, by the roots' word
    std::map<StreamId, Uuid> m_coordinatorStreams;
    std::set<Uuid> m_coordinatorInvitations;
    std::set<StreamId> m_takenBack; // whose device record was withdrawn
};

// A field of a folded record as text or id; empty or nil when it is not there.
std::string textIn(const Folded& folded, const std::string& field);
Uuid idIn(const Folded& folded, const std::string& field);
std::optional<LocalDay> dayIn(const Folded& folded, const std::string& field);
bool standsIn(const Folded& folded); // was not withdrawn

} // namespace duskrow::domain
