// SPDX-License-Identifier: MIT
#include "sync/roster/joining.h"

#include "domain/records/roster.h"
#include "store/stream_key.h"

namespace duskrow::sync {

using namespace duskrow::domain;
namespace fs = std::filesystem;

namespace {

Edit claimOf(
    const store::Store& store, const Ticket& ticket, const InvitationKey& key, const std::string& label)
{
    Device device;
    device.id = deviceId(store.programme(), store.stream());
    device.stream = formatHex(store.stream());
    device.key = formatHex(store.publicKey());
    device.label = label;
    device.invitation = ticket.invitation;
    device.proof = formatHex(key.sign(claimMessage(store.programme(), store.stream())));
    return creation(device, {});
}

Result<Done> claim(store::Store& store, const Ticket& ticket, const InvitationKey& key,
    const std::string& label, const Moment& now)
{
    if (const auto me = store.saveSettingNow("me", formatUuid(ticket.member)); !me) return me.error();
    const auto kept = store.keepNow({.author = ticket.member,
        .at = now.at,
        .offset = now.offset,
        .edits = {claimOf(store, ticket, key, label)},
        .draftDone = {}});
    if (!kept) return kept.error();
    return Done{};
}

// A store that was begun just now and holds nothing of anybody.
void discard(const std::string& storePath, const std::string& keyPath)
{
    std::error_code ignored;
    for (const char* ending : {"", "-wal", "-shm", ".lock"}) fs::remove(storePath + ending, ignored);
    fs::remove(keyPath, ignored);
}

} // namespace

Result<Invited> invite(const Member& member, LocalDay until, Instant now)
{
    Invited made{freshCode(), member.id, store::newId(now), {}};
    const auto key = keyOfCode(made.code);
    if (!key) return key.error();
    if (made.member.isNil()) {
        Member added = member;
        added.id = made.member = store::newId(now);
        made.edits.push_back(creation(added, {}));
    }
    Invitation invitation;
    invitation.id = made.invitation;
    invitation.member = made.member;
    invitation.key = formatHex(key->key);
    invitation.untilDay = until;
    made.edits.push_back(creation(invitation, {}));
    return made;
}

Result<std::unique_ptr<store::Store>> join(const std::string& storePath, store::OpenHow how,
    const Ticket& ticket, const InvitationKey& key, const std::string& label, const Moment& now)
{
    std::error_code failure;
    if (fs::exists(fs::symlink_status(storePath, failure))) return Error{ErrorCode::StoreExists, {storePath}};
    if (ticket.member.isNil()) return Error{ErrorCode::InvitationUnknown};
    if (ticket.until && now.day > *ticket.until)
        return Error{ErrorCode::InvitationPast, {formatDay(*ticket.until)}};
    const std::string keyPath = store::keyFile(how.keyFolder, ticket.programme);
    const auto held = store::loadKey(how.keyFolder, ticket.programme);
    if (!held) return held.error();
    if (*held) return Error{ErrorCode::AlreadyJoined, {keyPath}};

    how.mayCreate = true;
    how.programme = ticket.programme;
    how.founders = {ticket.founder};
    auto store = store::Store::open(storePath, how);
    const auto claimed = store ? claim(**store, ticket, key, label, now) : Result<Done>(Error(store.error()));
    if (claimed) return store;
    if (store) store->reset();
    discard(storePath, keyPath);
    return claimed.error();
}

} // namespace duskrow::sync
