// SPDX-License-Identifier: MIT
#include "sync/hub/rosters.h"

namespace duskrow::hub {

using domain::Change;
using domain::Roster;

std::shared_ptr<Rosters::Entry> Rosters::entry(const Uuid& programme)
{
    const std::lock_guard guard(m_mutex);
    auto& entry = m_entries[programme];
    if (!entry) entry = std::make_shared<Entry>();
    return entry;
}

Result<domain::Done> Rosters::catchUp(Entry& entry, const ProgrammeRow& row)
{
    if (entry.epoch != row.epoch || row.head < entry.upTo) {
        entry.facts.clear();
        entry.roster.reset();
        entry.upTo = 0;
        entry.epoch = row.epoch;
    }
    if (entry.roster && row.head <= entry.upTo) return domain::Done{};
    const auto facts = m_store.factsAfter(row.programme, entry.upTo);
    if (!facts) return facts.error();
    for (const std::string& line : facts->lines) {
        auto change = domain::readChange(line);
        if (change) entry.facts.push_back(std::move(*change));
    }
    entry.upTo = facts->head;
    if (entry.roster && facts->lines.empty()) return domain::Done{};
    entry.roster = std::make_shared<const Roster>(Roster::from(row.programme, {row.root}, entry.facts));
    return domain::Done{};
}

Result<std::optional<Known>> Rosters::of(const Uuid& programme)
{
    const auto row = m_store.programme(programme);
    if (!row) return row.error();
    if (!*row) return std::optional<Known>{};
    const auto own = entry(programme);
    const std::lock_guard guard(own->mutex);
    const auto done = catchUp(*own, **row);
    if (!done) return done.error();
    return std::optional(Known{**row, own->roster});
}

Result<Roster> Rosters::with(const Known& known, const std::vector<Change>& changes)
{
    const auto own = entry(known.row.programme);
    const std::lock_guard guard(own->mutex);
    if (changes.empty() && own->roster) return *own->roster;
    std::vector<Change> all = own->facts;
    all.insert(all.end(), changes.begin(), changes.end());
    return Roster::from(known.row.programme, {known.row.root}, all);
}

bool isOver(const std::optional<domain::LocalDay>& until, Instant now)
{
    return until && *until < domain::dayOf(now, std::chrono::hours(-12));
}

bool isActive(const Roster& roster, const StreamId& stream, Instant now)
{
    const auto device = roster.devices().find(stream);
    if (device == roster.devices().end() || device->second.endedAfter) return false;
    // The word of a root counts until it is ended: if it were shut out, nobody could let anybody in again.
    if (device->second.isRoot) return true;
    const auto member = roster.members().find(device->second.member);
    return member == roster.members().end() || !isOver(member->second.until, now);
}

} // namespace duskrow::hub
