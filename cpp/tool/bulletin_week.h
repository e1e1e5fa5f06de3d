// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "store/season_bulletin.h"
#include "tool/kept_issues.h"
#include "tool/trap_results.h"

namespace duskrow::tool {

// "2026-W28"
//
// Errors  NotADay for another form
domain::Result<domain::IsoWeek> weekTyped(const std::string& text);

// Which week is published, and how.
struct WeekAsked {
    domain::IsoWeek iso;
    std::string pest; // empty for the one with the most traps
    std::string keptFolder;
    bool reissue = false;
    domain::LocalDay today;
    domain::Instant now;
};

enum class WeekOutcome {
    New, // published now for the first time
    Again, // as it was published; nothing of it has moved
    Reissued,
    NotOver, // its counts are not all due yet
    NothingToReissue, // too few farms have changed
};

struct WeekMade {
    WeekOutcome outcome = WeekOutcome::New;
    domain::Bulletin bulletin;
    const domain::Protocol* protocol = nullptr;
    std::size_t waiting = 0; // traps whose change waits
    KeptIssues kept; // with this issue, unless there is none
};

// The bulletin of a week, from what was published of it or else from the records; what is new is kept. The
// sentence for feeds is written by `summary` from the finished bulletin.
//
// Errors  those of the store and the protocol; NameMissing for a season or pest that is not there
domain::Result<WeekMade> weekMade(store::Reader& reader, const WeekAsked& asked, ProtocolShelf& shelf,
    const std::function<std::string(const domain::Bulletin&, const domain::Protocol&)>& summary);

} // namespace duskrow::tool
