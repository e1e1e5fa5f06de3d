// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QFileInfo>

#include "demo/district.h"
#include "text/amounts.h"
#include "text/code_names.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

struct DemoLine {
    std::string store;
    std::string traps = "40";
    std::string seasons = "4";
    std::string seed = "1";
    std::string today = "2026-07-14";
    std::string keys;
    std::string protocols;
};

constexpr const char* demoPest = "bertha-armyworm";

Result<demo::Parameters> parametersOf(const DemoLine& line)
{
    demo::Parameters wanted;
    const auto traps = wholeNumber(line.traps, "traps", 1, demo::mostTraps);
    if (!traps) return traps.error();
    const auto seasons = wholeNumber(line.seasons, "seasons", 1, demo::mostSeasons);
    if (!seasons) return seasons.error();
    const auto seed = wholeNumber(line.seed, "seed", 0, demo::largestSeed);
    if (!seed) return seed.error();
    const auto today = parseDay(line.today);
    if (!today) return today.error();
    const auto protocol = protocolOf(demoPest, line.protocols);
    if (!protocol) return protocol.error();
    wanted.traps = *traps;
    wanted.seasons = *seasons;
    wanted.seed = *seed;
    wanted.today = *today;
    wanted.pest = protocol->id;
    wanted.protocolVersion = protocol->version;
    wanted.trapType = protocol->trapTypes.front().id;
    if (const auto checked = demo::checkParameters(wanted); !checked) return checked.error();
    return wanted;
}

Result<int> makeDemo(const DemoLine& line)
{
    const auto wanted = parametersOf(line);
    if (!wanted) return wanted.error();
    if (QFileInfo::exists(QString::fromStdString(line.store)))
        return Error{ErrorCode::StoreExists, {line.store}};
    store::OpenHow how;
    how.keyFolder = keyFolder(line.keys);
    how.mayCreate = true;
    const auto store = store::Store::open(line.store, how);
    if (!store) return store.error();
    const auto district = demo::fillStore(**store, *wanted);
    if (!district) return district.error();

    print(QCoreApplication::translate(
        "Tool", "An invented district, with everybody and everything in it, as on %1.")
              .arg(text::dayAndYear(wanted->today)));
    print(QCoreApplication::translate("Tool", "Kept in %1: %2 traps and %3 visits over %4 seasons.")
              .arg(QString::fromStdString(line.store), text::number(district->traps),
                  text::number(district->visits), text::number(wanted->seasons)));
    std::vector<QStringList> rows;
    for (const Member* member : {&district->grower, &district->agronomist, &district->coordinator})
        rows.push_back({text::name(*member->role), QString::fromStdString(member->name),
            QString::fromStdString(formatUuid(member->id))});
    printTable({QCoreApplication::translate("Tool", "who"), QCoreApplication::translate("Tool", "name"),
                   QCoreApplication::translate("Tool", "id")},
        rows, {});
    print(QCoreApplication::translate("Tool", "This device is the grower's."));
    return 0;
}

} // namespace

Work declareDemo(CLI::App& line)
{
    const auto typed = std::make_shared<DemoLine>();
    addStore(line, typed->store);
    line.add_option("--traps", typed->traps, "Traps in each season")->capture_default_str()->type_name("N");
    line.add_option("--seasons", typed->seasons, "Seasons, the present one among them")
        ->capture_default_str()
        ->type_name("N");
    line.add_option("--seed", typed->seed, "Another number makes another district")
        ->capture_default_str()
        ->type_name("N");
    line.add_option("--today", typed->today, "The day up to which everything is entered")
        ->capture_default_str()
        ->type_name("DAY");
    addKeys(line, typed->keys);
    addProtocols(line, typed->protocols);
    return [typed] { return makeDemo(*typed); };
}

} // namespace duskrow::tool
