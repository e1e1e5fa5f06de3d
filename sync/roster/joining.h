// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>

#include "domain/records/programme.h"
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
// Errors  NotEnoughMemory {}
domain::Result<Invited> invite(const domain::Member& member, domain::LocalDay until, domain::Instant now);

// What an invitation says, typed or read from a picture.
struct InvitationText {
    std::string code; // as readCode gives it
    domain::Uuid programme; // nil when only a code was typed
    std::optional<domain::StreamId> founder;
    std::string hub; // empty when there is none
};

// "duskrow:join?code=...": all that a phone needs, as text and in a QR picture.
std::string invitationLink(const InvitationText& invitation);
// A code alone, or the whole link; what a newer version writes into a link is passed over.
//
// Errors  CodeUnreadable {what was typed}
domain::Result<InvitationText> readInvitation(std::string_view typed);

// Which invitation is looked for. What is left out may be any.
struct TicketWanted {
    domain::PublicKey invitation{};
    domain::Uuid programme;
    std::optional<domain::StreamId> founder;
};

// Looks for an invitation in what lies in a shared folder, or in a carried file. The founder is the stream
// that made the programme's record and whose word lets the invitation count.
//
// Errors  InvitationUnknown {}; InvitationUsed {} when its claim lies there; InvitationDoubtful {} when
//         several programmes or founders answer; FolderMissing, FileUnreadable, CarriedNotOurs {path}
domain::Result<Ticket> ticketInFolder(const std::filesystem::path& shared, const TicketWanted& wanted);
domain::Result<Ticket> ticketInCarried(const std::filesystem::path& file, const TicketWanted& wanted);

// Makes the store of a device that joins, and claims the invitation in its first change. The device setting
// "me" says who holds it. What was made is taken away again when it does not come about.
//
// how     as for any opening; programme and founder come from the ticket
// label   what its owner calls the device
// Errors  StoreExists {path}; InvitationPast {last day}; AlreadyJoined {path of the key} when this
//         installation has a key of the programme: making another would end that store's stream;
//         InvitationUnknown when the ticket names no member; those of Store::open and keeping
domain::Result<std::unique_ptr<store::Store>> join(const std::string& storePath, store::OpenHow how,
    const Ticket& ticket, const InvitationKey& key, const std::string& label, const domain::Moment& now);

} // namespace duskrow::sync
