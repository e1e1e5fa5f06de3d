// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <mutex>

#include "domain/roster/roster.h"
#include "sync/hub/store/hub_store.h"

namespace duskrow::hub {

// A programme as it stands now.
struct Known {
    ProgrammeRow row;
    std::shared_ptr<const domain::Roster> roster;
};

// The rosters of programmes, caught up with the store before each answer: another hub may have stored since.
class Rosters {
public:
    explicit Rosters(HubStore& store) : m_store(store) { }

    // Nothing when there is no such programme.
    Result<std::optional<Known>> of(const Uuid& programme);

    // The roster as it would be with these changes.
    Result<domain::Roster> with(const Known& known, const std::vector<domain::Change>& changes);

private:
    struct Entry {
        std::mutex mutex;
        std::int64_t upTo = 0;
        std::int64_t epoch = 0;
        std::vector<domain::Change> facts;
        std::shared_ptr<const domain::Roster> roster;
    };

    std::shared_ptr<Entry> entry(const Uuid& programme);
    Result<domain::Done> catchUp(Entry& entry, const ProgrammeRow& row);

    HubStore& m_store;
    std::mutex m_mutex;
    std::map<Uuid, std::shared_ptr<Entry>> m_entries;
};

// Whether a member's time is over, by the day somewhere on earth where it is still yesterday.
bool isOver(const std::optional<domain::LocalDay>& until, Instant now);

// Whether a stream may use the hub now: enrolled, neither ended nor past its member's days.
bool isActive(const domain::Roster& roster, const StreamId& stream, Instant now);

} // namespace duskrow::hub
