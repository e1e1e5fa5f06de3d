// SPDX-License-Identifier: MIT
#pragma once

#include <QUrl>

#include "store/store.h"
#include "sync/client/hub_transport.h"
#include "sync/exchange/report.h"
#include "sync/roster/invitation_code.h"
#include "sync/roster/ticket.h"

// Talks to a hub. Every call waits for its answers in an event loop of its own, so it is for a worker's
// thread. A journey is asked while one waits; when it stops, what was asked for ends soon.
namespace duskrow::sync {

// One exchange with a hub: hands over what it lacks, fetches what is new. Asks for a token when it has none;
// claims the invitation there with the first segment when the hub does not know this device yet.
//
// Errors  HubUnreachable, HubNotOurs, NotEnrolled {address}; HubRefused {address, what it says}; those of the
// own store.
//         Whatever came in before stays in.
domain::Result<ExchangeReport> exchangeByHub(store::Store& store, const QUrl& hub, domain::Instant now,
    const Journey& journey = {}, const HubTransport& transport = {});

// Looks an invitation up.
//
// Errors  InvitationUnknown {}; HubUnreachable, HubNotOurs {address}; HubRefused {address, what it says}
domain::Result<Ticket> ticketAtHub(
    const QUrl& hub, const domain::PublicKey& invitation, const Journey& journey = {});

// Brings a programme to a hub for the first time, with the founding code that the hub's keeper gave out.
//
// Errors  InvitationUnknown {}; as exchangeByHub
domain::Result<domain::Done> foundAtHub(store::Store& store, const QUrl& hub, const InvitationKey& founding,
    const std::string& name, const Journey& journey = {});

// The route's name, as the store remembers what went that way.
std::string hubRoute(const QUrl& hub);

} // namespace duskrow::sync
