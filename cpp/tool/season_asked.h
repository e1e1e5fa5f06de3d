// SPDX-License-Identifier: MIT
#pragma once

#include "tool/arguments.h"
#include "tool/season_records.h"

namespace duskrow::tool {

// Which season of which store, and from what day it is looked at.
struct SeasonAsked {
    std::string store;
    std::string year;
    std::string on;
    std::string keys;
};

void addSeason(CLI::App& line, SeasonAsked& asked);

struct SeasonSeen {
    std::unique_ptr<store::Reader> reader;
    domain::Season season;
    domain::LocalDay today;
};

// Errors  those of dayOrToday, yearTyped, openToLook and seasonWanted
domain::Result<SeasonSeen> lookAt(const SeasonAsked& asked);

// "Season 2026, as on Tuesday 14 July 2026"
QString seasonHead(const domain::Season& season, domain::LocalDay today);

} // namespace duskrow::tool
