// SPDX-License-Identifier: MIT
// Whose sites are whose, and what is lent: the last rounds of reading a roster.
#include "domain/records/roster.h"
#include "domain/roster/roster_reading.h"

namespace duskrow::domain {

void RosterReading::readKeepers()
{
    const Counts counts = [this](const Change& change) { return isCoordinatorWord(change); };
    foldEach("assignment", counts, [&](const Folded& folded) {
        const std::pair assigned{idIn(folded, "member"), idIn(folded, "site")};
        const bool isNamed =
            folded.record == assignmentId(m_roster.m_programme, assigned.first, assigned.second);
        if (standsIn(folded) && isNamed) m_roster.m_assigned.insert(assigned);
    });
    std::map<Uuid, Uuid> chosen;
    foldEach("site", counts, [&](const Folded& folded) {
        if (const Uuid keeper = idIn(folded, "keeper"); !keeper.isNil()) chosen[folded.record] = keeper;
    });
    for (auto record = m_records.lower_bound({"site", Uuid{}});
         record != m_records.end() && record->first.first == "site"; ++record) {
        const Uuid& site = record->first.second;
        const auto keeper = chosen.find(site);
        const Uuid maker = makerOf(site, record->second, keeper == chosen.end() ? Uuid{} : keeper->second);
        if (!maker.isNil()) m_roster.m_made.insert({maker, site});
        m_roster.m_keepers[site] = keeper == chosen.end() ? maker : keeper->second;
    }
}

// Who made a site. Of several who claim it, the one whom a coordinator chose, else the lowest stream.
Uuid RosterReading::makerOf(const Uuid& site, const std::vector<Change>& changes, const Uuid& keeper) const
{
    Uuid maker;
    Uuid chosen;
    for (const Change& change : changes) {
        const auto device = m_roster.m_devices.find(change.ref.stream);
        if (device == m_roster.m_devices.end() || !isCreation(change)) continue;
        if (device->second.endedAfter && change.ref.seq > *device->second.endedAfter) continue;
        const Uuid& member = device->second.member;
        if (maker.isNil()) maker = member;
        const bool isChosen = member == keeper || m_roster.m_assigned.contains({member, site});
        if (chosen.isNil() && isChosen) chosen = member;
    }
    return chosen.isNil() ? maker : chosen;
}

// A change that names another site than its record lends nothing, whoever wrote it: each site's words are
// read apart.
void RosterReading::readLendings()
{
    std::set<Uuid> sites;
    for (auto record = m_records.lower_bound({"loan", Uuid{}});
         record != m_records.end() && record->first.first == "loan"; ++record)
        for (const Change& change : record->second) sites.insert(change.site);
    for (const Uuid& site : sites) {
        if (site.isNil()) continue;
        const Counts counts = [&](const Change& change) {
            const bool isHis = m_roster.isAtHome(m_roster.memberOf(change.ref.stream), site);
            return change.site == site && (isCoordinatorWord(change) || isHis);
        };
        foldEach("loan", counts, [&](const Folded& folded) {
            const Lending lending{idIn(folded, "trap"), site, idIn(folded, "member"),
                dayIn(folded, "from_day"), dayIn(folded, "until_day")};
            if (standsIn(folded) && !lending.member.isNil() && !lending.trap.isNil())
                m_roster.m_lendings.push_back(lending);
        });
    }
}

} // namespace duskrow::domain
