// SPDX-License-Identifier: MIT
#include "sync/client/hub_client.h"

#include "sync/client/hub_exchange.h"
#include "sync/client/hub_link.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

std::function<bool()> wantedBy(const Journey& journey)
{
    return [&journey] { return !journey || journey(0, 0); };
}

} // namespace

Result<ExchangeReport> exchangeByHub(
    store::Store& store, const QUrl& hub, Instant now, const Journey& journey, const HubTransport& transport)
{
    auto reader = store.reader();
    if (!reader) return reader.error();
    return HubExchange(store, **reader, hub, now, journey, transport).run();
}

Result<Ticket> ticketAtHub(const QUrl& hub, const PublicKey& invitation, const Journey& journey)
{
    HubLink link(hub, wantedBy(journey));
    const auto answer = link.get("/invitations/" + formatHex(invitation));
    if (!answer) return answer.error();
    if (answer->status == 404) return Error{ErrorCode::InvitationUnknown};
    if (answer->status != 200) return link.refusal(*answer);
    const auto object = objectIn(*answer);
    if (!object) return Error{ErrorCode::HubNotOurs, {link.address()}};
    Ticket ticket;
    const auto programme = parseUuid(textIn(*object, "programme"));
    const auto id = parseUuid(textIn(*object, "invitation"));
    // A founding invitation opens no programme that one could join.
    if (!programme || !id || !parseHex(textIn(*object, "root"), ticket.founder))
        return Error{ErrorCode::InvitationUnknown};
    ticket.programme = *programme;
    ticket.invitation = *id;
    ticket.member = parseUuid(textIn(*object, "member")).value_or(Uuid{});
    ticket.programmeName = textIn(*object, "name");
    return ticket;
}

Result<Done> foundAtHub(store::Store& store, const QUrl& hub, const InvitationKey& founding,
    const std::string& name, const Journey& journey)
{
    HubLink link(hub, wantedBy(journey));
    const Signature proof = founding.sign(claimMessage(store.programme(), store.stream()));
    const auto answer = link.post("/programmes",
        {{"invitation", formatHex(founding.key)}, {"key", formatHex(store.publicKey())}, {"name", name},
            {"programme", formatUuid(store.programme())}, {"proof", formatHex(proof)},
            {"stream", formatHex(store.stream())}});
    if (!answer) return answer.error();
    if (answer->status == 404) return Error{ErrorCode::InvitationUnknown};
    if (answer->status != 200 && answer->status != 201) return link.refusal(*answer);
    return Done{};
}

std::string hubRoute(const QUrl& hub)
{
    return "hub:" + hub.toString(QUrl::RemoveUserInfo | QUrl::StripTrailingSlash).toStdString();
}

} // namespace duskrow::sync
