// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include <nlohmann/json.hpp>

#include "sync/roster/roster_edits.h"
#include "text/amounts.h"
#include "tool/arguments.h"
#include "tool/command_programme.h"
#include "tool/holding.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

struct EndLine {
    std::string store;
    std::string keys;
    std::string device;
    bool asJson = false;
};

Result<int> endDevice(const EndLine& line)
{
    auto holding = openToWrite(line.store, line.keys);
    if (!holding) return holding.error();
    if (const auto allowed = asCoordinator(*holding); !allowed) return allowed.error();
    StreamId stream{};
    const bool isStream = parseHex(line.device, stream);
    const auto device = holding->roster.devices().find(stream);
    if (!isStream || device == holding->roster.devices().end())
        return Error{ErrorCode::NameMissing, {"device", line.device}};
    if (holding->roster.isCoordinator(stream))
        if (const auto allowed = asRoot(*holding); !allowed) return allowed.error();
    const auto last = sync::lastArrived(*holding->reader, stream);
    if (!last) return last.error();
    const auto kept = keep(*holding, {sync::ending(holding->store->programme(), stream, *last)});
    if (!kept) return kept.error();
    if (line.asJson) {
        const nlohmann::ordered_json json{{"stream", line.device}, {"ended_after", *last}};
        print(QString::fromStdString(json.dump(2)));
        return 0;
    }
    print(QCoreApplication::translate("Tool",
        "The device %1 has ended. Its %2 changes that arrived here count; what it writes later is kept "
        "aside.")
              .arg(QString::fromStdString(device->second.label), text::number(*last)));
    return 0;
}

} // namespace

Work declareProgrammeEnd(CLI::App& line)
{
    const auto typed = std::make_shared<EndLine>();
    addStore(line, typed->store);
    line.add_option("--device", typed->device, "Its stream, as programme members shows it")
        ->required()
        ->type_name("STREAM");
    line.add_flag("--json", typed->asJson, "What was kept, for other programs");
    addKeys(line, typed->keys);
    return [typed] { return endDevice(*typed); };
}

} // namespace duskrow::tool
