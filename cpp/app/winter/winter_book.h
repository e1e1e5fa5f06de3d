// SPDX-License-Identifier: MIT
#pragma once

#include "domain/records/next_year.h"
#include "domain/rules/supplies.h"
#include "store/season_records.h"
#include "text/thank_you_text.h"

namespace duskrow::app {

struct Cooperator {
    domain::Uuid member;
    text::ThankYou thanks;
    std::optional<domain::NextYear> said; // of the year after the season; nothing before there is a record

    [[nodiscard]] std::optional<bool> goesOn() const { return said ? said->goesOn : std::nullopt; }
};

// Traps of one pest and type: of those who go on, and of those who have not said.
struct PestOrder {
    QString pest; // by name
    QString trapType;
    std::int64_t surely = 0;
    std::int64_t perhaps = 0;
    std::int64_t lost = 0; // this season, of anybody
    domain::SupplyRules rules;
};

// A season as it is told to those who kept its traps, and what another one needs.
struct WinterBook {
    domain::Season season; // the latest that has begun; without an id when there is none
    std::vector<Cooperator> cooperators; // who keep traps, by name
    std::vector<PestOrder> orders; // by pest
    std::int64_t withoutKeeper = 0; // traps

    [[nodiscard]] int nextYear() const { return season.year.value_or(0) + 1; }
};

// Of the latest season that is not of a later year than `today`.
//
// Errors  as in store/queries.h; those of loadProtocol
domain::Result<WinterBook> readWinter(store::Reader& reader, domain::LocalDay today);

} // namespace duskrow::app
