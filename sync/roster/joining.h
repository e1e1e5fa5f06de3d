// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>

#include "store/store.h"
#include "sync/roster/invitation_code.h"
#include "sync/roster/ticket.h"

// How people come into a programme. FORMAT.md section 5.
namespace duskrow::sync {

// Who is invited, and what the coordinator hands to him.
struct Invited {
    std::string code; // ten characters, shown once and kept nowhere
    domain::Uuid member;
    domain::Uuid invitation;
    std::vector<domain::Edit> edits; // to be kept by the coordinator's store
};

// member  of an existing member when his id is set (another phone of his), else a new one is made
Invited invite(const domain::Member& member, domain::LocalDay until, domain::Instant now);

// "duskrow:join?code=...": all that a phone needs, as text and in a QR picture; and back. `hub` may be empty.
std::string invitationLink(const std::string& code, const domain::Uuid& programme,
    const domain::StreamId& founder, const std::string& hub);
struct InvitationText {
    std::string code; // as readCode gives it
    domain::Uuid programme; // nil when only a code was typed
    std::optional<domain::StreamId> founder;
    std::string hub;
};
// Errors  CodeUnreadable {what was typed}
domain::Result<InvitationText> readInvitation(std::string_view typed);

// Looks for an invitation in what lies in a shared folder, or in a carried file.
//
// Errors  InvitationUnknown {}; FolderMissing, FileUnreadable, CarriedNotOurs {path}
domain::Result<Ticket> ticketInFolder(
    const std::filesystem::path& shared, const domain::PublicKey& invitation);
domain::Result<Ticket> ticketInCarried(
    const std::filesystem::path& file, const domain::PublicKey& invitation);

// Makes the store of a device that joins, and claims the invitation in its first change.
//
// how     as for any opening; programme and founder come from the ticket
// Errors  StoreExists {path}; those of Store::open and keeping
domain::Result<std::unique_ptr<store::Store>> join(const std::string& storePath, store::OpenHow how,
    const Ticket& ticket, const InvitationKey& key, const std::string& label, const domain::Moment& now);

// Writes the records of a programme that one kept alone into another that one has joined: the same ids, under
// the member's own name. The old file stays as it is. Returns how many records came along.
//
// Errors  those of reading and keeping
domain::Result<std::int64_t> bringAlong(
    store::Reader& solo, store::Store& joined, const domain::Uuid& member, const domain::Moment& now);

} // namespace duskrow::sync
