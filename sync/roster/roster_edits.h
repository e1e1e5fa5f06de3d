// SPDX-License-Identifier: MIT
#pragma once

#include "domain/log/edit.h"
#include "domain/records/roster.h"
#include "store/store.h"

// A coordinator's words on who may do what, as edits to be kept. Whether they count is for the roster to say:
// FORMAT.md section 5.
namespace duskrow::sync {

// This device is that member's. Counts before every claim.
domain::Edit enrolment(const domain::Uuid& programme, const domain::EnrolledDevice& device);
// This device is the founding one's equal. Only a root's word.
domain::Edit secondRoot(const domain::Uuid& programme, const domain::StreamId& stream);
// A lost phone: nothing of it counts behind its last good number.
domain::Edit ending(const domain::Uuid& programme, const domain::StreamId& stream, std::int64_t lastGood);
// A member leaves after this day.
domain::Edit leaving(const domain::Uuid& member, domain::LocalDay lastDay);
// A member works at a site that he does not keep.
domain::Edit assignment(const domain::Uuid& programme, const domain::Uuid& member, const domain::Uuid& site);
// One change that was kept aside counts.
domain::Edit admission(const domain::Uuid& programme, const domain::ChangeRef& change);
// A record stands as it is now, or is open again.
domain::Edit ruling(const domain::Uuid& programme, const domain::Uuid& record, domain::Says says,
    const std::string& remark = {});
// The count of a visit is left out of sums and pictures, with the reason; an empty reason lets it in again.
domain::Edit leavingOut(const domain::Uuid& programme, const domain::Uuid& visit, const std::string& reason);

// The number of the last change of a stream that arrived here; 0 when none did.
domain::Result<std::int64_t> lastArrived(store::Reader& reader, const domain::StreamId& stream);

// Streams in which the programme was written while there were no others (a phone that was replaced) are made
// the own stream's equals, so that whoever joins by this stream's word takes theirs too. Goes with the first
// invitation; empty when all is said, or this is no founding stream.
domain::Result<std::vector<domain::Edit>> earlierFounders(store::Store& store, store::Reader& reader);

// Who holds this device: the device setting "me", else the member that the roster knows.
//
// Errors  MemberUnsaid {path}
domain::Result<domain::Uuid> holderOf(store::Store& store, store::Reader& reader);

// On a coordinator's device: says of every device whose claim counts whose it is, so that no later claim of
// the same invitation can count any more. To be called after each exchange; on other devices it does nothing.
// Returns how many devices were confirmed.
//
// Errors  those of the store; MemberUnsaid
domain::Result<std::int64_t> confirmClaims(store::Store& store, const domain::Moment& now);

} // namespace duskrow::sync
