// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "domain/rules/trap_facts.h"

namespace duskrow::domain {

// What to ask before a visit is kept. A question never blocks: "yes, keep it" is always an answer.
enum class VisitQuestion {
    InFuture, // {days after today}
    BeforeSetUp, // {days before set-up}
    AfterEnd, // {days after the trap ended}
    SecondWithinDay, // {minutes between, 1 or 0: the other visit says the trap was emptied} did the first
                     // empty it?
    LongSinceEmptied, // {days since the trap was last emptied or set up}
    CatchFarAboveOthers, // {this catch, the largest other catch of this trap}
    CatchUnlikelyLarge, // {this catch, the catch above which is asked}
};

struct AskedQuestion {
    VisitQuestion question;
    std::vector<std::int64_t> numbers; // in the order said above

    bool operator==(const AskedQuestion&) const = default;
};

// Another visit to the same trap, earlier or later.
struct OtherVisit {
    Instant at;
    bool wasEmptied = false;
    std::optional<Moths> caught; // nothing when it could not be counted
};

struct VisitToKeep {
    LocalDay day;
    Instant at;
    std::optional<Moths> caught; // nothing when it could not be counted
    std::optional<LocalDay> setUp; // of the trap
    std::optional<LocalDay> ended;
    std::optional<LocalDay> lastEmptied; // before this visit
};

// The questions a visit raises, those about its day first; most visits raise none.
//
// others  without the visit itself
// today   the day on which the visit is kept
// Source  24 hours, 21 days, four times and 20 more, 5,000 moths: common practice, no source
std::vector<AskedQuestion> questionsFor(
    const VisitToKeep& visit, std::span<const OtherVisit> others, LocalDay today);

// The same of a visit among the records of its trap, before it is kept or long afterwards.
//
// visit  has a day; a visit of the same id among the facts is taken for this one and left out
std::vector<AskedQuestion> questionsAbout(const Visit& visit, const TrapFacts& facts, LocalDay today);

// When a visit was made; noon of its day, UTC, where nobody noted the time.
Instant momentOf(const Visit& visit);

} // namespace duskrow::domain
