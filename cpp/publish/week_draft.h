// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "domain/protocol/protocol.h"
#include "publish/kept_issues.h"
#include "store/season_bulletin.h"

namespace duskrow::publish {

// "2026-W28"
//
// Errors  NotADay for another form
domain::Result<domain::IsoWeek> weekTyped(const std::string& text);

// Which week is to be published, and how.
struct WeekAsked {
    domain::IsoWeek iso;
    domain::Season season; // that the week is of
    std::string pest; // empty for the one with the most traps
    std::string keptFolder;
    bool reissue = false;
    domain::LocalDay today;
};

enum class WeekOutcome {
    New, // not published before
    Again, // as it was published; nothing of it has moved
    Reissued,
    NotOver, // its counts are not all due yet
    NothingToReissue, // too few farms have changed
    NoTraps, // none stood out in it, and none was counted
};

// Whether there is a bulletin to be read, published or not.
constexpr bool hasBulletin(WeekOutcome outcome)
{
    return outcome != WeekOutcome::NotOver && outcome != WeekOutcome::NoTraps;
}

// Gives the protocol of a pest; it must outlive the draft.
using ProtocolOf = std::function<domain::Result<const domain::Protocol*>(const std::string& pest)>;

// A week as it would be published: nothing is kept of it yet.
struct WeekDraft {
    WeekOutcome outcome = WeekOutcome::New;
    domain::Bulletin bulletin; // of a week that is not over or had no traps: its head alone
    const domain::Protocol* protocol = nullptr;
    std::size_t waiting = 0; // traps whose change waits
    std::optional<domain::KeptIssue>
        fresh; // what is to be kept when it is published; nothing where nothing is new
    KeptIssues kept;
    std::vector<domain::Uuid> districts; // the ids of the bulletin's districts, in their order
};

// The bulletin of a week, from what was published of it or else from the records.
//
// Errors  those of the store and the protocol; NameMissing for a pest that is not there; BulletinElsewhere
//         {week} for a week that the records say was published, and of which this desk has kept nothing
domain::Result<WeekDraft> weekDraft(
    store::Reader& reader, const WeekAsked& asked, const ProtocolOf& protocolOf);

// Keeps what is new of a draft: from now on the week is frozen. Nothing to do where nothing is new.
//
// summary  one sentence for feeds
// Errors   FileUnwritable {path}
domain::Result<domain::Done> keepDraft(WeekDraft& draft, const std::string& summary, domain::Instant now);

} // namespace duskrow::publish
