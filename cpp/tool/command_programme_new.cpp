// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QSysInfo>

#include <filesystem>

#include "domain/records/roster.h"
#include "store/queries.h"
#include "store/stream_key.h"
#include "sync/client/hub_client.h"
#include "sync/roster/roster_edits.h"
#include "tool/arguments.h"
#include "tool/command_programme.h"
#include "tool/exchange_ways.h"
#include "tool/holding.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

struct NewLine {
    std::string store;
    std::string keys;
    std::string name;
    std::string region;
    std::string me = "Coordinator";
    std::string hub;
    std::string code;
    bool asJson = false;
};

Result<Done> writeFirst(store::Store& store, const NewLine& line)
{
    const Moment now = rightNow();
    Programme programme;
    programme.id = store.programme();
    programme.name = line.name;
    programme.region = line.region;
    Member me;
    me.id = store::newId(now.at);
    me.name = line.me;
    me.role = Role::Coordinator;
    EnrolledDevice device;
    device.stream = store.stream();
    device.key = store.publicKey();
    device.member = me.id;
    device.label = QSysInfo::machineHostName().toStdString();
    if (const auto saved = store.saveSettingNow("me", formatUuid(me.id)); !saved) return saved.error();
    const auto kept = store.keepNow({.author = me.id,
        .at = now.at,
        .offset = now.offset,
        .edits = {creation(programme, {}), creation(me, {}), sync::enrolment(store.programme(), device)},
        .draftDone = {}});
    if (!kept) return kept.error();
    return Done{};
}

void sayMade(const store::Store& store, const NewLine& line)
{
    const QString id = QString::fromStdString(formatUuid(store.programme()));
    const QString stream = QString::fromStdString(formatHex(store.stream()));
    if (line.asJson) {
        const nlohmann::ordered_json json{
            {"programme", id.toStdString()}, {"name", line.name}, {"root", stream.toStdString()}};
        return print(QString::fromStdString(json.dump(2)));
    }
    print(QCoreApplication::translate("Tool", "%1 has begun, in %2. This device founded it.")
              .arg(QString::fromStdString(line.name), QString::fromStdString(line.store)));
}

Result<int> makeProgramme(const NewLine& line)
{
    for (const auto& [field, typed] : {std::pair{"name", &line.name}, std::pair{"name", &line.me}})
        if (QString::fromStdString(*typed).trimmed().isEmpty()) return Error{ErrorCode::Empty, {field}};
    std::error_code failure;
    if (std::filesystem::exists(line.store, failure)) return Error{ErrorCode::StoreExists, {line.store}};
    store::OpenHow how;
    how.keyFolder = keyFolder(line.keys);
    how.mayCreate = true;
    const auto store = store::Store::open(line.store, how);
    if (!store) return store.error();
    if (const auto written = writeFirst(**store, line); !written) return written.error();
    if (!line.hub.empty())
        if (const auto there = foundThere(**store, line.name, line.hub, line.code); !there)
            return there.error();
    sayMade(**store, line);
    return 0;
}

Result<int> foundLater(const NewLine& line)
{
    auto holding = openToWrite(line.store, line.keys);
    if (!holding) return holding.error();
    if (const auto allowed = asRoot(*holding); !allowed) return allowed.error();
    const auto programme = store::programme(*holding->reader, holding->store->programme());
    if (!programme) return programme.error();
    const std::string name = *programme ? (*programme)->name : std::string();
    if (name.empty()) return Error{ErrorCode::Empty, {"name"}};
    const auto there = foundThere(*holding->store, name, line.hub, line.code);
    if (!there) return there.error();
    print(QCoreApplication::translate("Tool", "%1 is at the hub %2 now.")
              .arg(QString::fromStdString(name), QString::fromStdString(line.hub)));
    return 0;
}

void addHub(CLI::App& line, NewLine& typed, bool isNeeded)
{
    CLI::Option* hub = line.add_option("--hub", typed.hub, "The address of a hub to bring it to");
    CLI::Option* code = line.add_option("--code", typed.code, "The founding code from the keeper of the hub");
    hub->type_name("URL")->needs(code)->required(isNeeded);
    code->type_name("CODE")->needs(hub)->required(isNeeded);
    addKeys(line, typed.keys);
}

} // namespace

Result<Done> foundThere(
    store::Store& store, const std::string& name, const std::string& hub, const std::string& code)
{
    const auto address = hubAddress(hub);
    if (!address) return address.error();
    const auto read = sync::readCode(code);
    if (!read) return read.error();
    const auto key = sync::keyOfCode(*read);
    if (!key) return key.error();
    const auto founded = sync::foundAtHub(store, *address, *key, name);
    if (!founded) return founded.error();
    const auto handed = sync::exchangeByHub(store, *address, rightNow().at);
    if (!handed) return handed.error();
    return Done{};
}

Work declareProgrammeNew(CLI::App& line)
{
    const auto typed = std::make_shared<NewLine>();
    addStore(line, typed->store);
    line.add_option("--name", typed->name, "What the programme is called")->required()->type_name("NAME");
    line.add_option("--region", typed->region, "Where it traps")->type_name("REGION");
    line.add_option("--me", typed->me, "Who you are, its first coordinator")
        ->capture_default_str()
        ->type_name("NAME");
    line.add_flag("--json", typed->asJson, "What was made, for other programs");
    addHub(line, *typed, false);
    return [typed] { return makeProgramme(*typed); };
}

Work declareProgrammeFound(CLI::App& line)
{
    const auto typed = std::make_shared<NewLine>();
    addStore(line, typed->store);
    addHub(line, *typed, true);
    return [typed] { return foundLater(*typed); };
}

} // namespace duskrow::tool
