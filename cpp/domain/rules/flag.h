// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/base/time.h"
#include "domain/base/units.h"
#include "domain/base/uuid.h"
#include "domain/rules/rates.h"

namespace duskrow::domain {

// What a record is checked for. The numbers of its flag follow each check, in their order.
enum class Check {
    InFuture, // {days after today}
    BeforeSetUp, // {days before set-up}
    AfterTakeDown, // {days after take-down}
    WithoutTrap, // {moths, or -1 when it could not be counted}
    DoubleEntry, // {moths, the same in the other visit of that day}
    NightsCountedTwice, // {moths, moths of the visit that emptied the trap on that day}
    ReplacedTrapCounted, // {days after the set-up of the trap in its stead}
    CountFell, // {moths, moths at the visit before, which did not empty the trap}
    LongSinceEmptied, // {nights}
    MovedTrap, // {metres between the two fixes, metres explained, accuracy of the visit's fix and of the
               // trap's in metres}
    FasterThanDriving, // {traps, minutes between the first and the last, metres from trap to trap, minutes
                       // that driving takes}
    FarAboveAround, // {moths, nights, the same over 7 nights, what was expected over 7 nights}
    FarBelowAround, // as above
    FarAboveBefore, // {moths, nights, moths and nights of the visit before}
    CatchUnlikelyLarge, // {moths, the catch above which is asked}
    RoundedCounts, // {counts that end in 0 or 5, counts of ten moths and more}
};
inline constexpr std::array<std::string_view, 16> checkNames{"in_future", "before_set_up", "after_take_down",
    "without_trap", "double_entry", "nights_counted_twice", "replaced_trap_counted", "count_fell",
    "long_since_emptied", "moved_trap", "faster_than_driving", "far_above_around", "far_below_around",
    "far_above_before", "catch_unlikely_large", "rounded_counts"};

// How many good counts get a flag.
enum class GoodCounts {
    None, // if the days it goes by are right
    OneIn, // one in so many
    AllAlike, // every good count of which the same is true
    NotMeasured,
};
inline constexpr std::array<std::string_view, 4> goodCountsNames{
    "none", "one_in", "all_alike", "not_measured"};

struct FalseAlarms {
    GoodCounts which = GoodCounts::NotMeasured;
    std::int64_t oneIn = 0; // good counts, fixes or observers for each that gets the flag; 0 unless OneIn

    bool operator==(const FalseAlarms&) const = default;
};

// Source  one in so many: simulated summers, tests/bench/checks_rates.cpp, which holds them against these;
//         MovedTrap by its definition
FalseAlarms falseAlarmsOf(Check check);

// Who stood at the trap: a member, or a name as it was typed when another person wrote it down.
struct Observer {
    Uuid member;
    std::string typed; // empty for a member

    auto operator<=>(const Observer&) const = default;
    [[nodiscard]] bool isKnown() const { return !member.isNil() || !typed.empty(); }
};

// The count of another trap in the same week.
struct CountNearby {
    Uuid trap;
    Uuid visit;
    MothsPerWeek rate;
    Metres distance;
};

// "Please look at this": why, with the numbers. It changes nothing and guesses nothing.
struct Flag {
    Check check = Check::InFuture;
    Uuid visit = {}; // nil when it is about all counts of one observer
    Uuid trap = {}; // likewise
    std::optional<LocalDay> day = {}; // of the visit, or of the last count
    Observer observer = {}; // of the checks of a person
    std::vector<std::int64_t> numbers = {};
    std::vector<CountNearby> around = {}; // what a count was held against, nearest first
    std::vector<Uuid> others = {}; // visits, or the trap in its stead, that belong to it as well
};

} // namespace duskrow::domain
