// SPDX-License-Identifier: MIT
#include "domain/rules/no_count.h"

#include "domain/rules/catch_intervals.h"

namespace duskrow::domain {

namespace {

// Whether somebody who could not count for this reason will have thrown the catch out. A preset only.
bool likelyEmptied(NoCountReason reason)
{
    return reason == NoCountReason::Fallen || reason == NoCountReason::Flooded
        || reason == NoCountReason::Spoiled;
}

std::optional<TrapState> stateFor(NoCountReason reason)
{
    switch (reason) {
    case NoCountReason::Fallen:
        return TrapState::Fallen;
    case NoCountReason::Missing:
        return TrapState::Missing;
    case NoCountReason::Flooded:
        return TrapState::Flooded;
    case NoCountReason::Spoiled:
    case NoCountReason::Other:
        return TrapState::Fine;
    case NoCountReason::Access:
        return std::nullopt; // nobody saw it
    }
    return std::nullopt;
}

} // namespace

void clearEstimate(Visit& visit)
{
    visit.countMethod.reset();
    visit.partCounts.clear();
    visit.partAmounts.clear();
    visit.wholeAmount.reset();
    visit.pestLow.reset();
    visit.pestHigh.reset();
}

void sayCouldNotCount(Visit& visit, NoCountReason reason)
{
    visit.outcome = Outcome::CouldNotCount;
    visit.reason = reason;
    visit.pest.reset();
    visit.notIt.reset();
    visit.unsure.reset();
    visit.bees.reset();
    clearEstimate(visit);
    visit.emptied = likelyEmptied(reason);
    visit.state = stateFor(reason);
    visit.atLeast = hasFailed(visit) ? std::optional(true) : std::nullopt;
}

} // namespace duskrow::domain
