// SPDX-License-Identifier: MIT
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/exchange_ways.h"
#include "tool/holding.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

struct ExchangeLine {
    std::string store;
    std::string keys;
    WayLine way;
    bool asJson = false;
};

Result<int> exchange(const ExchangeLine& line)
{
    auto holding = openToWrite(line.store, line.keys);
    if (!holding) return holding.error();
    const auto exchanged = exchangeBy(*holding->store, line.way);
    if (!exchanged) return exchanged.error();
    if (line.asJson)
        print(QString::fromStdString(exchangeJson(*exchanged).dump(2)));
    else
        printExchange(*exchanged);
    return exitCode(*exchanged);
}

} // namespace

Work declareExchange(CLI::App& line)
{
    const auto typed = std::make_shared<ExchangeLine>();
    addStore(line, typed->store);
    CLI::Option_group* ways = addWays(line, typed->way);
    CLI::Option* write =
        ways->add_option("--write", typed->way.write, "A file to be carried to others")->type_name("FILE");
    ways->require_option(1);
    line.add_option("--for", typed->way.forMember, "Only what this member lacks, as far as it is known here")
        ->type_name("MEMBER")
        ->needs(write);
    line.add_flag("--json", typed->asJson, "What came of it, for other programs");
    addKeys(line, typed->keys);
    line.footer("Exits with 0 when all went well, 1 when there is something to look at, 2 when it could not "
                "be done.");
    return [typed] { return exchange(*typed); };
}

} // namespace duskrow::tool
