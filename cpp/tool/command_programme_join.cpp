// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QSysInfo>

#include "sync/client/hub_client.h"
#include "sync/roster/bringing_along.h"
#include "sync/roster/joining.h"
#include "text/amounts.h"
#include "tool/arguments.h"
#include "tool/command_programme.h"
#include "tool/exchange_ways.h"
#include "tool/holding.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

struct JoinLine {
    std::string store;
    std::string keys;
    std::string code;
    std::string label;
    std::string bring;
    WayLine way;
    bool asJson = false;
};

// What came of it; the exchange may fail, and the store is there all the same.
struct Joined {
    sync::Ticket ticket;
    StreamId stream{};
    Exchanged exchanged;
    std::optional<sync::Brought> brought;
};

Result<sync::Ticket> ticketFor(const JoinLine& line, const sync::TicketWanted& wanted)
{
    if (!line.way.folder.empty()) return sync::ticketInFolder(line.way.folder, wanted);
    if (!line.way.read.empty()) return sync::ticketInCarried(line.way.read, wanted);
    const auto hub = hubAddress(line.way.hub);
    if (!hub) return hub.error();
    auto ticket = sync::ticketAtHub(*hub, wanted.invitation);
    // What the whole invitation says goes before what a hub says.
    const bool isOther = ticket
        && ((!wanted.programme.isNil() && ticket->programme != wanted.programme)
            || (wanted.founder && ticket->founder != *wanted.founder));
    if (isOther) return Error{ErrorCode::InvitationUnknown};
    return ticket;
}

void exchangeOrSay(store::Store& store, const WayLine& way, Exchanged& all)
{
    auto done = exchangeBy(store, way);
    if (!done) {
        all.report.troubles.push_back(done.error());
        return;
    }
    done->report.sent += all.report.sent;
    done->report.received += all.report.received;
    done->report.changes += all.report.changes;
    done->report.photosSent += all.report.photosSent;
    done->report.photosReceived += all.report.photosReceived;
    all = std::move(*done);
}

Result<Joined> comeIn(const JoinLine& line)
{
    const auto typed = sync::readInvitation(line.code);
    if (!typed) return typed.error();
    JoinLine known = line;
    if (!known.way.isNamed()) known.way.hub = typed->hub;
    std::unique_ptr<store::Reader> solo;
    if (!line.bring.empty()) {
        auto opened = openToLook(line.bring, line.keys);
        if (!opened) return opened.error();
        solo = std::move(*opened);
    }
    const auto key = sync::keyOfCode(typed->code);
    if (!key) return key.error();
    const auto ticket = ticketFor(known, {key->key, typed->programme, typed->founder});
    if (!ticket) return ticket.error();
    store::OpenHow how;
    how.keyFolder = keyFolder(line.keys);
    const std::string label = line.label.empty() ? QSysInfo::machineHostName().toStdString() : line.label;
    const auto store = sync::join(line.store, how, *ticket, *key, label, rightNow());
    if (!store) return store.error();

    Joined joined{*ticket, (*store)->stream(), {}, {}};
    exchangeOrSay(**store, known.way, joined.exchanged);
    if (!solo) return joined;
    const auto brought = sync::bringAlong(*solo, **store, ticket->member, rightNow());
    if (!brought) return brought.error();
    joined.brought = *brought;
    if (known.way.read.empty() && joined.exchanged.report.troubles.empty())
        exchangeOrSay(**store, known.way, joined.exchanged);
    return joined;
}

nlohmann::ordered_json broughtJson(const sync::Brought& brought)
{
    return {{"records", brought.records}, {"already_there", brought.alreadyThere},
        {"photographs", brought.photos}, {"photographs_missing", brought.photosMissing},
        {"years_not_here", brought.yearsNotHere}, {"pests_not_here", brought.pestsNotHere},
        {"districts_not_here", brought.districtsNotHere}, {"sites_of_other_keepers", brought.otherKeepers}};
}

void printBrought(const sync::Brought& brought)
{
    print(QCoreApplication::translate("Tool", "Records that came along: %1. Photographs: %2.")
              .arg(text::number(brought.records), text::number(brought.photos)));
    const auto say = [](const char* words, std::int64_t number) {
        if (number > 0) print(QCoreApplication::translate("Tool", words).arg(text::number(number)));
    };
    say(QT_TRANSLATE_NOOP("Tool", "Records that were here already, and stay as they are: %1."),
        brought.alreadyThere);
    say(QT_TRANSLATE_NOOP("Tool", "Photographs that are missing beside the old store: %1."),
        brought.photosMissing);
    say(QT_TRANSLATE_NOOP("Tool", "Sites that another member kept, and that are yours now: %1."),
        brought.otherKeepers);
    for (const std::string& district : brought.districtsNotHere)
        print(QCoreApplication::translate(
            "Tool", "The programme has no district %1. Ask the coordinator to let it in, or to add it.")
                  .arg(QString::fromStdString(district)));
    for (const int year : brought.yearsNotHere)
        print(QCoreApplication::translate(
            "Tool", "The programme has no season %1 yet. Your records of it lie ready.")
                  .arg(QString::number(year)));
    for (const std::string& pest : brought.pestsNotHere)
        print(QCoreApplication::translate("Tool", "The programme does not use %1 in each of those seasons.")
                  .arg(QString::fromStdString(pest)));
}

Result<int> joinProgramme(const JoinLine& line)
{
    const auto joined = comeIn(line);
    if (!joined) return joined.error();
    if (line.asJson) {
        const nlohmann::ordered_json json{{"programme", formatUuid(joined->ticket.programme)},
            {"name", joined->ticket.programmeName}, {"member", formatUuid(joined->ticket.member)},
            {"stream", formatHex(joined->stream)}, {"exchange", exchangeJson(joined->exchanged)},
            {"brought", joined->brought ? broughtJson(*joined->brought) : nlohmann::ordered_json()}};
        print(QString::fromStdString(json.dump(2)));
        return exitCode(joined->exchanged);
    }
    print(QCoreApplication::translate("Tool", "You are in %1. The store is %2.")
              .arg(QString::fromStdString(joined->ticket.programmeName), QString::fromStdString(line.store)));
    printExchange(joined->exchanged);
    if (joined->brought) printBrought(*joined->brought);
    if (!line.way.read.empty())
        print(QCoreApplication::translate(
            "Tool", "Write a file with exchange --write and carry it back, so that the others know you."));
    return exitCode(joined->exchanged);
}

} // namespace

Work declareProgrammeJoin(CLI::App& line)
{
    const auto typed = std::make_shared<JoinLine>();
    addStore(line, typed->store);
    line.add_option("--code", typed->code, "The ten characters, or the whole link in quotes")
        ->required()
        ->type_name("CODE");
    addWays(line, typed->way);
    line.add_option("--label", typed->label, "What you call this device (its own name if left out)")
        ->type_name("NAME");
    line.add_option("--bring", typed->bring, "A store that you kept alone, whose records come along")
        ->type_name("STORE");
    line.add_flag("--json", typed->asJson, "What came of it, for other programs");
    addKeys(line, typed->keys);
    line.callback([typed] {
        if (!typed->way.isNamed() && typed->code.find("hub=") == std::string::npos)
            throw CLI::RequiredError("--folder, --hub or --read");
    });
    return [typed] { return joinProgramme(*typed); };
}

} // namespace duskrow::tool
