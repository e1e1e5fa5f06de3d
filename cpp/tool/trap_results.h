// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <memory>
#include <string>
#include <vector>

#include "domain/protocol/protocol.h"
#include "domain/rules/trap_season.h"
#include "tool/season_records.h"

namespace duskrow::tool {

// The protocols in use, each read once.
class ProtocolShelf {
public:
    explicit ProtocolShelf(std::string namedFolder) : m_folder(std::move(namedFolder)) { }

    domain::Result<const domain::Protocol*> of(const std::string& pest);

private:
    std::string m_folder;
    std::map<std::string, std::unique_ptr<domain::Protocol>> m_held;
};

// What the season of one trap comes to.
struct TrapResult {
    const domain::Trap* trap = nullptr;
    const domain::Protocol* protocol = nullptr;
    domain::SeasonRules rules;
    domain::TrapSeason season;
    const domain::Band* band = nullptr; // nothing while the season takes none, or where nobody published any
};

// facts  of one trap, with the season that it belongs to
domain::Result<TrapResult> trapResult(const domain::TrapFacts& facts, const domain::Season& season,
    domain::LocalDay today, ProtocolShelf& shelf);

// Of every trap of a season, in the order of the records. They look on both.
domain::Result<std::vector<TrapResult>> trapResults(
    const SeasonRecords& records, domain::LocalDay today, ProtocolShelf& shelf);

} // namespace duskrow::tool
