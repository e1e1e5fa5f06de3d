// SPDX-License-Identifier: MIT
#include "app/exchange/join_run.h"

#include <QDir>
#include <QUrl>

#include "app/exchange/ways.h"
#include "sync/carry/carry_route.h"
#include "sync/client/hub_client.h"
#include "sync/folder/folder_route.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

QString kindOf(const JoinAsk& ask)
{
    return ask.way.section(QLatin1Char(':'), 0, 0);
}

QString placeOf(const JoinAsk& ask)
{
    return ask.way.section(QLatin1Char(':'), 1);
}

Result<sync::Ticket> ticketOf(
    const JoinAsk& ask, const sync::InvitationKey& key, const sync::Journey& journey)
{
    const std::string place = placeOf(ask).toStdString();
    const sync::TicketWanted wanted{key.key, ask.invitation.programme, ask.invitation.founder};
    if (kindOf(ask) == QLatin1String("folder")) return sync::ticketInFolder(place, wanted);
    if (kindOf(ask) == QLatin1String("file")) return sync::ticketInCarried(place, wanted);
    return sync::ticketAtHub(QUrl(placeOf(ask)), key.key, journey);
}

Result<sync::ExchangeReport> exchange(const JoinAsk& ask, store::Store& store, const sync::Journey& journey)
{
    const std::string place = placeOf(ask).toStdString();
    if (kindOf(ask) == QLatin1String("folder"))
        return sync::exchangeByFolder(store, place, ask.now.at, journey);
    if (kindOf(ask) == QLatin1String("file")) return sync::readCarried(store, place, ask.now.at, journey);
    return sync::exchangeByHub(store, QUrl(placeOf(ask)), ask.now.at, journey);
}

// A carried file is read once; a folder and a hub are kept as ways.
Result<Done> keepWay(const JoinAsk& ask, store::Store& store)
{
    Ways ways;
    if (kindOf(ask) == QLatin1String("folder")) ways.folders << placeOf(ask);
    if (kindOf(ask) == QLatin1String("hub")) ways.hub = placeOf(ask);
    return ways.isEmpty() ? Result<Done>(Done{}) : saveWays(store, ways);
}

} // namespace

Result<Joined> joinProgramme(const JoinAsk& ask, const store::Store& solo, const sync::Journey& journey)
{
    const auto key = sync::keyOfCode(ask.invitation.code);
    if (!key) return key.error();
    const auto ticket = ticketOf(ask, *key, journey);
    if (!ticket) return ticket.error();
    const QString path =
        QDir(ask.storeFolder)
            .filePath(QString::fromStdString(formatUuid(ticket->programme)) + QStringLiteral(".duskrow"));
    auto store = sync::join(path.toStdString(), {.keyFolder = ask.keyFolder.toStdString()}, *ticket, *key,
        ask.label.toStdString(), ask.now);
    if (!store) return store.error();

    // From here on one is in: what goes wrong is told, and can be mended later.
    Joined joined{std::move(*store), std::nullopt, {}};
    const auto note = [&joined](const auto& outcome) {
        if (!outcome) joined.troubles.push_back(outcome.error());
    };
    note(keepWay(ask, *joined.store));
    note(exchange(ask, *joined.store, journey));
    if (!ask.bringsAlong) return joined;
    const auto reader = solo.reader();
    note(reader);
    if (!reader) return joined;
    const auto brought = sync::bringAlong(**reader, *joined.store, ticket->member, ask.now);
    note(brought);
    if (!brought) return joined;
    joined.brought = *brought;
    if (kindOf(ask) != QLatin1String("file")) note(exchange(ask, *joined.store, journey));
    return joined;
}

} // namespace duskrow::app
