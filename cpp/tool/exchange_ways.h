// SPDX-License-Identifier: MIT
#pragma once

#include <QUrl>

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>
#include <string>

#include "store/store.h"
#include "sync/exchange/report.h"

namespace duskrow::tool {

// Which way records go, as it was typed.
struct WayLine {
    std::string folder;
    std::string hub;
    std::string read; // a carried file
    std::string write;
    std::string forMember;

    [[nodiscard]] bool isNamed() const
    {
        return !(folder.empty() && hub.empty() && read.empty() && write.empty());
    }
};

// --folder, --hub and --read, of which at most one may be typed.
CLI::Option_group* addWays(CLI::App& line, WayLine& way);

struct Exchanged {
    sync::ExchangeReport report;
    std::int64_t confirmed = 0; // devices that came in
};

// One exchange. A coordinator's device confirms whoever came in, and hands that over at once.
//
// Errors  those of the way; NameMissing, NameAmbiguous {"member", name}
domain::Result<Exchanged> exchangeBy(store::Store& store, const WayLine& way);

// An address of a hub.
//
// Errors  HubUnreachable {address} when it cannot be one
domain::Result<QUrl> hubAddress(const std::string& typed);

nlohmann::ordered_json exchangeJson(const Exchanged& exchanged);
void printExchange(const Exchanged& exchanged);
// 1 when there is something to look at, else 0.
int exitCode(const Exchanged& exchanged);

} // namespace duskrow::tool
