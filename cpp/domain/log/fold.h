// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "domain/log/change.h"
#include "domain/roster/roster.h"

namespace duskrow::domain {

// A value nobody has replaced yet.
struct Head {
    ChangeRef ref;
    Value value;
};

// A field on which people differ: more than one value still stands.
struct Difference {
    std::string field;
    std::vector<Head> heads; // in the order of their references
};

// What the changes of one record come to.
struct Folded {
    std::string kind;
    Uuid record;
    Uuid site;
    ByName<std::vector<Head>> heads;
    ByName<Value> values; // one value a field: the head, or the provisional pick
    std::vector<Difference> differences; // of measured fields only
    bool broughtBack = false; // withdrawn by one who had not seen an edit that still stands
    std::vector<std::pair<ChangeRef, Standing>> aside; // what the roster does not let count
    std::vector<ChangeRef> proposals; // edits by others of a record that stands
    bool isRulingStale = false; // the record was changed since the coordinator said that it stands
    bool isThere = true; // false when no change of it counts
};

// A coordinator's word that a record stands, as folded from its own changes.
struct RulingSeen {
    std::set<ChangeRef> saw;

    bool operator==(const RulingSeen&) const = default;
};

// What the changes of a ruling say; nothing unless its record stands by them.
std::optional<RulingSeen> rulingIn(std::span<const Change> ofTheRuling, const Roster& roster);

// What folding one record depends on besides its own changes. Nothing of it: everything counts.
struct FoldContext {
    const Roster* roster = nullptr;
    const RulingSeen* ruling = nullptr;
};

// Folds the changes of one record.
//
// heads(field) = the changes that set it, less those that another change cites as its base. This is a pure
// function of the set of changes: order, repetition and batches cannot matter, and clocks order nothing.
//
// changes  all of one record, in any order, repeats allowed; at least one. Two changes under one reference (a
// forked
//          stream) both count
Folded fold(std::span<const Change> changes, const FoldContext& context = {});

// What fold() makes of a field of the only change of a record, where nothing can keep it aside.
const Value& onlyValue(std::string_view field, const FieldSet& set);

// The versions a person sees when looking at a record now: what a new change must cite.
std::vector<ChangeRef> baseOf(const Folded& folded, const std::string& field);
std::vector<ChangeRef> allSeen(const Folded& folded);

// Writes the folded values into a record of its kind.
template <typename R>
R toRecord(const Folded& folded)
{
    R record;
    record.id = folded.record;
    for (const auto& [name, value] : folded.values) assign(kindOf<R>(), record, name, value);
    return record;
}

} // namespace duskrow::domain
