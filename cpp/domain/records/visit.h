// SPDX-License-Identifier: MIT
#pragma once

#include <array>

#include "domain/records/field.h"

namespace duskrow::domain {

enum class Outcome { Counted, CouldNotCount };
inline constexpr std::array<std::string_view, 2> outcomeNames{"counted", "could_not_count"};

enum class NoCountReason { Fallen, Missing, Flooded, Spoiled, Access, Other };
inline constexpr std::array<std::string_view, 6> noCountReasonNames{
    "fallen", "missing", "flooded", "spoiled", "access", "other"};

enum class TrapState { Fine, Fallen, Flooded, Damaged, Missing, LureGone };
inline constexpr std::array<std::string_view, 6> trapStateNames{
    "fine", "fallen", "flooded", "damaged", "missing", "lure_gone"};

enum class CountMethod { Each, Volume, Weight };
inline constexpr std::array<std::string_view, 3> countMethodNames{"each", "volume", "weight"};

// How a count reached the desk where it was typed in for another.
enum class ReportedHow { Phone, TextMessage, InPerson, Paper };
inline constexpr std::array<std::string_view, 4> reportedHowNames{
    "phone", "text_message", "in_person", "paper"};

// One stop at a trap. Counted (0 or more), could not count, and no visit at all are three different things.
struct Visit : Record {
    Uuid trap;
    std::optional<LocalDay> day;
    std::optional<std::int64_t> atMs;
    std::optional<int> offsetMin;
    std::string observer; // who stood there, when it is not the author of the change
    std::optional<ReportedHow> reportedHow; // typed at a desk by the author, for the observer
    std::optional<Outcome> outcome;
    std::optional<NoCountReason> reason;
    std::optional<Moths> pest; // of the pest, since the trap was last emptied
    std::optional<Moths> notIt;
    std::optional<Moths> unsure;
    std::optional<Bees> bees;
    std::optional<CountMethod> countMethod;
    std::string partCounts; // of a heavy catch, as typed: moths in each counted part, separated by spaces
    std::string partAmounts; // the amount of each part, in the small unit of the method
    std::optional<std::int64_t> wholeAmount; // microlitres or milligrams, by the method
    std::optional<Moths> pestLow; // range of a heavy catch
    std::optional<Moths> pestHigh;
    std::optional<bool> emptied;
    std::optional<TrapState> state;
    std::optional<bool> atLeast; // the trap failed during the interval
    std::optional<bool> sprayed; // since the last visit
    std::string sprayedWhat;
    std::optional<LocalDay> sprayedDay;
    std::optional<std::int64_t> reentryHours; // by the label
    std::optional<bool> lureThere;
    std::optional<bool> stripThere;
    std::optional<bool> mothsAlive; // in the bucket: the strip is spent
    std::optional<Millimetres> entrance;
    std::optional<Millimetres> canopy;
    std::optional<bool> floweringOver;
    std::optional<std::int64_t> latE7;
    std::optional<std::int64_t> lonE7;
    std::optional<Millimetres> accuracy;
    std::string photo;
    std::string remark;
};

enum class SampleState { Kept, Sent, Received, Named };
inline constexpr std::array<std::string_view, 4> sampleStateNames{"kept", "sent", "received", "named"};

// Moths nobody in the field was sure of: bagged with a pencil number, frozen, sent and named.
struct Sample : Record {
    Uuid visit;
    Uuid trap;
    std::string number;
    std::optional<Moths> moths;
    std::optional<SampleState> state;
    std::optional<LocalDay> keptDay;
    std::optional<LocalDay> sentDay;
    std::optional<LocalDay> receivedDay;
    std::optional<LocalDay> namedDay;
    std::string sentTo;
    std::string namedBy;
    std::string namedAs;
    std::optional<Moths> pest; // of these moths, how many were the pest
};

template <>
const RecordKind& kindOf<Visit>();
template <>
const RecordKind& kindOf<Sample>();

// The id of a visit that a table of counts tells of: one a trap and day.
Uuid visitId(const Uuid& programme, const Uuid& trap, LocalDay day);

} // namespace duskrow::domain
