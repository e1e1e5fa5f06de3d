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

    void foldEach(
        std::string_view kind, const Counts& counts, const std::function<void(const Folded&)>& take) const;
    [[nodiscard]] Ends endsBy(const Counts& counts) const;
    [[nodiscard]] bool isRootWord(const Change& change) const;
    [[nodiscard]] bool isCoordinatorWord(const Change& change) const;
    [[nodiscard]] bool isForRoots(const Change& change) const;

    void readRoots();
    void readCoordinators();
    void readMembers(const Counts& counts);
    void readInvitations(const Counts& counts);
    void readDevices(const Counts& counts);
    void readClaims();
    void readKeepers();
    void readLendings();
    void readAdmissions();

    Roster& m_roster;
    std::map<std::pair<std::string, Uuid>, std::vector<Change>> m_records;
    [[nodiscard]] bool goesOnFrom(const StreamId& stream, const std::set<StreamId>& some) const;
    void readFollowers();

    std::map<StreamId, StreamId> m_followers; // new stream, the one it goes on from
    std::set<StreamId> m_roots;
    Ends m_rootEnds;
    std::set<Uuid> m_coordinators; // members, by the roots' word
    std::map<StreamId, Uuid> m_rootDevices; // devices and their members, by the roots' word
    std::set<StreamId> m_coordinatorStreams;
};

// A field of a folded record as text or id; empty or nil when it is not there.
std::string textIn(const Folded& folded, const std::string& field);
Uuid idIn(const Folded& folded, const std::string& field);
bool standsIn(const Folded& folded); // was not withdrawn

} // namespace duskrow::domain
