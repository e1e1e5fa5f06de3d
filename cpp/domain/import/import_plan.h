// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "domain/import/count_row.h"
#include "domain/log/edit.h"
#include "domain/records/programme.h"
#include "domain/records/trap.h"
#include "domain/records/visit.h"

namespace duskrow::domain {

// As much of a visit as a row is held against.
struct KnownVisit {
    Uuid id;
    Uuid trap;
    LocalDay day;
    std::optional<Outcome> outcome;
    std::optional<Moths> pest;
    std::string withdrawn;
};

// What the store holds of the years of a table; withdrawn records among it.
struct KnownRecords {
    std::vector<Season> seasons; // of all years
    std::vector<District> districts;
    std::vector<ProtocolUse> uses;
    std::vector<Site> sites;
    std::vector<Trap> traps;
    std::vector<KnownVisit> visits;
};

// What a table of counts does not say of itself.
struct ImportTerms {
    Uuid programme;
    std::string pest; // protocol id
    std::string protocolVersion;
    std::string trapType;
    // Whether the traps were emptied at a count, where a row does not say. Protocols ask for it at every
    // count; nothing: nobody knows, and of two counts in a row only the higher one is sure.
    std::optional<bool> emptied = true;
};

// What undoing an import writes as the reason, by which importing the same again knows that the record may
// stand again. The name of the file follows.
inline constexpr std::string_view undoneReason = "import undone: ";

struct PlannedVisit {
    Uuid id;
    std::uint32_t trap = 0; // in ImportPlan::traps
    std::uint32_t row = 0; // in ImportPlan::rows
    bool standsAgain = false; // it is there, taken back by an undoing
};

struct PlannedTrap {
    Uuid id;
    Uuid site;
};

// What an import would make, before anything is made.
struct ImportPlan {
    std::vector<CountRow> rows;
    std::optional<bool> emptied; // where a row does not say
    std::vector<Edit> places; // seasons, pests in use, districts, sites and traps, in this order
    std::vector<PlannedTrap> traps;
    std::vector<PlannedVisit> visits; // in the order of their ids
    std::map<std::string, std::size_t, std::less<>> made; // records by kind, visits among them
    std::size_t alreadyThere = 0; // rows that the store holds as they are
    std::size_t repeated = 0; // rows that say again what an earlier row says
    std::size_t trapsWithoutSetDay = 0;
    RowWords refused; // rows of which nothing is made
    RowWords notes; // rows that are made all the same, with something to look at

    // Every change there is to keep.
    [[nodiscard]] std::size_t size() const { return places.size() + visits.size(); }
    // at  below size()
    [[nodiscard]] Edit edit(std::size_t at) const;
    // What the new districts or sites are called, in their order: a name spelled otherwise is seen here.
    [[nodiscard]] std::vector<std::string> newNames(std::string_view kind) const;
};

// Works out what a table makes. A site, trap or visit that the store has, by name or by day, is met there;
// all else gets an id made of the programme and its names, so that the same rows meet in the same records
// whoever takes them in. Nothing that is there is changed. A blank row, a second count for the same trap and
// day, a count that differs from the store's, and what somebody took back are refused, each with its line.
//
// rows     those that could be read
// refused  the words on those that could not
ImportPlan planImport(
    std::vector<CountRow> rows, RowWords refused, const KnownRecords& known, const ImportTerms& terms);

} // namespace duskrow::domain
