// SPDX-License-Identifier: MIT
#pragma once

#include "domain/records/programme.h"
#include "domain/records/roster.h"
#include "domain/records/trap.h"
#include "domain/records/visit.h"
#include "domain/records/walk.h"
#include "domain/records/weather.h"
#include "store/reader.h"

namespace duskrow::store {

// Every look at the store that a layer above needs, by name. Errors: StoreDamaged, DiskFailed, StoreBusy.

domain::Result<std::optional<domain::Programme>> programme(Reader& reader, const domain::Uuid& id);
domain::Result<std::vector<domain::Season>> seasons(Reader& reader); // oldest first
domain::Result<std::optional<domain::Season>> seasonOfYear(Reader& reader, int year);
domain::Result<std::vector<domain::Member>> members(Reader& reader);
domain::Result<std::vector<domain::District>> districts(Reader& reader);
domain::Result<std::vector<domain::ProtocolUse>> protocolsInUse(Reader& reader, const domain::Uuid& season);

domain::Result<std::vector<domain::Site>> sitesOf(Reader& reader, const domain::Uuid& season);
domain::Result<std::vector<domain::Trap>> trapsOf(Reader& reader, const domain::Uuid& season);
domain::Result<std::optional<domain::Site>> site(Reader& reader, const domain::Uuid& id);
domain::Result<std::optional<domain::Trap>> trap(Reader& reader, const domain::Uuid& id);
domain::Result<std::optional<domain::Visit>> visit(Reader& reader, const domain::Uuid& id);
domain::Result<std::optional<domain::Service>> service(Reader& reader, const domain::Uuid& id);
domain::Result<std::optional<domain::Loan>> loan(Reader& reader, const domain::Uuid& id);
domain::Result<std::optional<domain::Sample>> sample(Reader& reader, const domain::Uuid& id);

domain::Result<std::vector<domain::Trap>> trapsAt(Reader& reader, const domain::Uuid& site);
// The trap beside this one, whichever of the two says so.
domain::Result<std::optional<domain::Trap>> pairOf(Reader& reader, const domain::Trap& trap);
// The trap set up later at the same spot in the stead of this one.
domain::Result<std::optional<domain::Trap>> successorOf(Reader& reader, const domain::Trap& trap);

// Of one trap, oldest first. Visits on one day stand in the order of their moments.
domain::Result<std::vector<domain::Visit>> visitsOf(
    Reader& reader, const domain::Uuid& trap, bool withWithdrawn = false);
domain::Result<std::vector<domain::Service>> servicesOf(Reader& reader, const domain::Uuid& trap);
domain::Result<std::vector<domain::Sample>> samplesOf(Reader& reader, const domain::Uuid& trap);
domain::Result<std::vector<domain::Loan>> loansOf(Reader& reader, const domain::Uuid& trap);

domain::Result<std::optional<domain::Walk>> walk(Reader& reader, const domain::Uuid& id);
domain::Result<std::vector<domain::Walk>> walksOf(Reader& reader, const domain::Uuid& season); // newest first
// Of one walk, in the order in which they were searched.
domain::Result<std::vector<domain::Frame>> framesOf(Reader& reader, const domain::Uuid& walk);
domain::Result<std::vector<domain::Frame>> framesOfSeason(Reader& reader, const domain::Uuid& season);
// The latest of all walks: money and label that a next one may begin with.
domain::Result<std::optional<domain::Decision>> lastDecision(Reader& reader);
// Of one walk, the latest last.
domain::Result<std::vector<domain::Decision>> decisionsOf(Reader& reader, const domain::Uuid& walk);
// Of all walks of a season, the latest of each walk last.
domain::Result<std::vector<domain::Decision>> decisionsOfSeason(Reader& reader, const domain::Uuid& season);

// Of all traps of a season at once, by trap and day, with only the fields that say what is due.
domain::Result<std::vector<domain::Visit>> visitsForDue(Reader& reader, const domain::Uuid& season);
// Of all traps of a season at once, with only the fields that make a season's sum.
domain::Result<std::vector<domain::Visit>> visitsForCatch(Reader& reader, const domain::Uuid& season);
// Of all traps of a season at once, with only the fields that a desk's checks look at.
domain::Result<std::vector<domain::Visit>> visitsForChecks(Reader& reader, const domain::Uuid& season);
// Visits of the days of a year whose trap is not here, or was withdrawn.
domain::Result<std::vector<domain::Visit>> visitsWithoutTrap(Reader& reader, int year);
// Coordinators' words on records; and the visits whose count they left out of the picture, by id.
domain::Result<std::vector<domain::Ruling>> rulings(Reader& reader);
domain::Result<std::vector<domain::Uuid>> leftOut(Reader& reader);
domain::Result<std::vector<domain::Service>> servicesOfSeason(Reader& reader, const domain::Uuid& season);
domain::Result<std::vector<domain::Loan>> loansOfSeason(Reader& reader, const domain::Uuid& season);
domain::Result<std::vector<domain::Sample>> samplesOfSeason(Reader& reader, const domain::Uuid& season);

// Weather stations by name; the temperatures of one, oldest first.
domain::Result<std::vector<domain::Station>> stations(Reader& reader, bool withWithdrawn = false);
domain::Result<std::vector<domain::Temperature>> temperaturesOf(
    Reader& reader, const domain::Uuid& station, bool withWithdrawn = false);

} // namespace duskrow::store
