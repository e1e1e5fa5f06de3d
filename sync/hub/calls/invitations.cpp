// SPDX-License-Identifier: MIT
#include "domain/base/signing.h"
#include "domain/base/utf8.h"
#include "sync/hub/call.h"

// Asking what an invitation is for, and founding a programme with one.
namespace duskrow::hub {

namespace {

constexpr std::size_t longestName = 200; // bytes

Response wrongInvitation(Hub& hub, Call& call)
{
    countWrong(hub, call);
    return refusal(404, "invitation", "This invitation is not known here, or is used, or its time is over.");
}

std::string programmeText(const Uuid& programme)
{
    return programme.isNil() ? std::string() : domain::formatUuid(programme);
}

std::string streamText(const StreamId& stream)
{
    return stream == StreamId{} ? std::string() : domain::formatHex(stream);
}

nlohmann::json invitationJson(const std::string& name, const Uuid& programme, const StreamId& root)
{
    return {{"founding", true}, {"invitation", ""}, {"name", name}, {"programme", programmeText(programme)},
        {"root", streamText(root)}};
}

// The invitation of this key that may still be claimed; nil when there is none.
Uuid openInvitation(const domain::Roster& roster, const PublicKey& key, Instant now)
{
    for (const auto& [id, invitation] : roster.invitations())
        if (invitation.key == key && !invitation.isClaimed && !isOver(invitation.until, now)) return id;
    return {};
}

} // namespace

std::optional<Response> tooManyWrong(Hub& hub, const Call& call)
{
    const Instant now = hub.now();
    const auto wait =
        std::max(hub.wrongOfAddress.wouldWait(call.address, now), hub.wrongOfAll.wouldWait("", now));
    if (wait == 0) return std::nullopt;
    return later(429, "too-many-wrong", "Too many invitations that were wrong. Ask again later.", wait);
}

void countWrong(Hub& hub, const Call& call)
{
    hub.wrongOfAddress.secondsToWait(call.address, hub.now());
    hub.wrongOfAll.secondsToWait("", hub.now());
}

Response askInvitation(Hub& hub, Call& call)
{
    if (const auto refused = tooManyWrong(hub, call)) return *refused;
    const auto key = hexOf<32>(call.parts.front());
    if (!key) return wrongInvitation(hub, call);
    const auto founding = hub.store.founding(*key);
    if (!founding) return storeFailed(founding.error());
    if (*founding) {
        const Founding& own = **founding;
        if (own.programme.isNil() && own.until < hub.now()) return wrongInvitation(hub, call);
        return jsonAnswer(200, invitationJson(own.name, own.programme, own.stream));
    }
    const auto programmes = hub.store.programmesInviting(*key);
    if (!programmes) return storeFailed(programmes.error());
    for (const Uuid& programme : *programmes) {
        const auto known = hub.rosters.of(programme);
        if (!known) return storeFailed(known.error());
        const Uuid invitation = *known ? openInvitation(*(*known)->roster, *key, hub.now()) : Uuid{};
        if (invitation.isNil()) continue;
        const ProgrammeRow& row = (*known)->row;
        nlohmann::json answer = invitationJson(row.name, row.programme, row.root);
        answer["founding"] = false;
        answer["invitation"] = domain::formatUuid(invitation);
        answer["member"] = domain::formatUuid((*known)->roster->invitations().at(invitation).member);
        return jsonAnswer(200, answer);
    }
    return wrongInvitation(hub, call);
}

Response foundProgramme(Hub& hub, Call& call)
{
    if (const auto refused = tooManyWrong(hub, call)) return *refused;
    const auto texts =
        textsOf(call.request.body, {"invitation", "key", "name", "programme", "proof", "stream"});
    if (!texts) return refusal(400, "body", "The body is not what this call takes.");
    const auto invitation = hexOf<32>(texts->at("invitation"));
    const auto key = hexOf<32>(texts->at("key"));
    const auto programme = domain::parseUuid(texts->at("programme"));
    const auto proof = hexOf<64>(texts->at("proof"));
    const auto stream = hexOf<16>(texts->at("stream"));
    const std::string& name = texts->at("name");
    if (!invitation || !key || !programme || programme->isNil() || !proof || !stream || name.empty()
        || name.size() > longestName || !domain::isReadableText(name))
        return refusal(400, "body", "The body is not what this call takes.");
    call.programme = *programme;
    call.stream = *stream;
    if (domain::streamOf(*key, *programme) != *stream)
        return refusal(422, "stream", "The stream does not belong to this key.");
    const auto founding = hub.store.founding(*invitation);
    if (!founding) return storeFailed(founding.error());
    if (!*founding) return wrongInvitation(hub, call);
    if (!domain::isSignedBy(*invitation, domain::claimMessage(*programme, *stream), *proof)) {
        countWrong(hub, call);
        return refusal(403, "proof", "The proof does not belong to this invitation.");
    }
    if ((*founding)->programme.isNil() && (*founding)->until < hub.now()) return wrongInvitation(hub, call);
    Founding made = **founding;
    made.name = name;
    made.programme = *programme;
    made.stream = *stream;
    const auto outcome = hub.store.found(made, *key, hub.now());
    if (!outcome) return storeFailed(outcome.error());
    switch (*outcome) {
    case HubStore::Founded::New:
        return jsonAnswer(201, {{"programme", programmeText(*programme)}});
    case HubStore::Founded::Again:
        return jsonAnswer(200, {{"programme", programmeText(*programme)}});
    case HubStore::Founded::Taken:
        return refusal(409, "programme", "There is a programme of this id already.");
    case HubStore::Founded::Used:
        break;
    }
    return refusal(403, "used", "This invitation was used for another programme.");
}

} // namespace duskrow::hub
