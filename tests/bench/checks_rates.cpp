// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <map>

#include "bench/summers.h"
#include "domain/rules/digit_heaping.h"
#include "domain/rules/moved_trap.h"
#include "domain/rules/season_checks.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using namespace duskrow::tests;

// How often good counts are flagged and how often faults are found, by invented summers, against an earlier
// simulation of the same by other code. A figure fails when it is worse than the table by more than both
// Monte-Carlo errors allow:
//   p - q > 3.3 sqrt(r (1 - r) (1/N + 1/M)) + rounding,  r the pooled share, N and M the trials behind p and
//   q,
// for false flags, and q - p for faults found. 3.3 leaves about one chance in a hundred of a failure
// anywhere. Better than the table is no failure.

namespace {

constexpr int summers = 25;
constexpr double reach = 3.3;

int failed = 0;

enum class Better { Less, More };

// trialsOfTheTable  0 where the table is a limit and no estimate
void hold(const char* what, std::int64_t hits, std::int64_t trials, double table, double trialsOfTheTable,
    double rounding, Better better)
{
    const double found = static_cast<double>(hits) / static_cast<double>(trials);
    const double own = static_cast<double>(trials);
    const double pooled =
        std::clamp((found * own + table * trialsOfTheTable) / (own + trialsOfTheTable), 0.5 / own, 1.0);
    const double each = trialsOfTheTable > 0.0 ? 1.0 / own + 1.0 / trialsOfTheTable : 1.0 / own;
    const double most = reach * std::sqrt(pooled * (1.0 - pooled) * each) + rounding;
    const double worse = better == Better::Less ? found - table : table - found;
    const bool isWorse = worse > most;
    failed += isWorse ? 1 : 0;
    std::printf("%-44s %8.3f %% %8.3f %% %8.3f %9lld%s\n", what, 100.0 * found, 100.0 * table, 100.0 * most,
        static_cast<long long>(trials), isWorse ? "  worse" : "");
}

// The dice first: tails of the negative binomial as R has them.
void holdDice(std::mt19937_64& dice)
{
    constexpr int throws = 100'000;
    for (const auto& row : readGolden("rules/qc_checks.csv")) {
        const double tail = row.number("value1");
        if (row.text("check") != "nb_tail" || tail < 0.002 || tail > 0.998) continue;
        int reached = 0;
        for (int i = 0; i < throws; ++i)
            if (static_cast<double>(negativeBinomial(row.number("a"), row.number("b"), dice))
                >= row.number("c"))
                ++reached;
        const double off = std::abs(static_cast<double>(reached) / throws - tail);
        if (off <= 4.0 * std::sqrt(tail * (1.0 - tail) / throws)) continue;
        std::printf("the dice are loaded: mean %g, k %g\n", row.number("a"), row.number("b"));
        std::exit(1);
    }
}

struct Slips {
    std::int64_t tried = 0;
    std::int64_t found = 0;
};

struct Tally {
    std::int64_t counts = 0;
    std::int64_t above = 0;
    std::int64_t below = 0;
    Slips tenfold;
    Slips threefold;
    Slips none;
};

// One count is changed, and the whole summer judged again.
void plant(Slips& slips, std::vector<RegionalCount> counts, std::size_t at, double rate)
{
    counts[at].rate = MothsPerWeek{rate};
    ++slips.tried;
    for (const RegionalResidual& residual : regionalResiduals(counts))
        if (residual.count == at && (rate > 0.0 ? residual.isFarAbove() : residual.isFarBelow()))
            ++slips.found;
}

void judge(Tally& tally, const InventedSummer& summer, std::mt19937_64& dice)
{
    constexpr double everySo = 8.0; // counts that are changed, to save time
    constexpr double leastForTimes = 10.0;
    constexpr double leastForNone = 60.0;
    std::bernoulli_distribution isTried(1.0 / everySo);
    const auto counts = summer.regionalCounts();
    for (const RegionalResidual& residual : regionalResiduals(counts)) {
        ++tally.counts;
        tally.above += residual.isFarAbove() ? 1 : 0;
        tally.below += residual.isFarBelow() ? 1 : 0;
        const double rate = counts[residual.count].rate.value();
        if (!isTried(dice)) continue;
        if (rate >= leastForTimes) plant(tally.tenfold, counts, residual.count, 10.0 * rate);
        if (rate >= leastForTimes) plant(tally.threefold, counts, residual.count, 3.0 * rate);
        if (residual.expected.value() >= leastForNone) plant(tally.none, counts, residual.count, 0.0);
    }
}

struct TableRow {
    double noise;
    double above;
    double below;
    double tenfold;
    double threefold;
    double none;
};
constexpr std::array table{
    TableRow{1.0, 0.0020, 0.0029, 0.28, 0.04, 0.92},
    TableRow{3.0, 0.0024, 0.0044, 0.64, 0.10, 1.00},
    TableRow{8.0, 0.0028, 0.0034, 0.87, 0.19, 1.00},
};

constexpr double fine = 0.00005;
constexpr double coarse = 0.005;
constexpr double countsOfTheTable = 25.0 * 100.0 * 8.0;

Tally judged(const SummerHabits& habits, std::mt19937_64& dice)
{
    Tally tally;
    for (int i = 0; i < summers; ++i) judge(tally, inventSummer(habits, dice), dice);
    return tally;
}

void holdGoodCounts(const Tally& tally, const TableRow& row)
{
    hold("good counts flagged far above", tally.above, tally.counts, row.above, countsOfTheTable, fine,
        Better::Less);
    hold("good counts flagged far below", tally.below, tally.counts, row.below, countsOfTheTable, fine,
        Better::Less);
}

void holdRegion(std::mt19937_64& dice)
{
    constexpr double slipsOfTheTable = 2'000.0; // not said; fewer would only widen what is allowed
    const auto holdFound = [&](const char* what, const Slips& slips, double share) {
        hold(what, slips.found, slips.tried, share, slipsOfTheTable, coarse, Better::More);
    };
    for (const TableRow& row : table) {
        std::printf("-- noise of a trap k = %g\n", row.noise);
        const Tally tally = judged({.noise = row.noise}, dice);
        holdGoodCounts(tally, row);
        holdFound("ten times too many, found", tally.tenfold, row.tenfold);
        holdFound("three times too many, found", tally.threefold, row.threefold);
        holdFound("none where 60 and more were expected, found", tally.none, row.none);
    }
    // Many weeks next to nothing, in which residuals are small.
    for (const TableRow& row : table) {
        std::printf("-- a short and small flight, k = %g\n", row.noise);
        holdGoodCounts(
            judged({.noise = row.noise, .wholeCatch = 200.0, .flightDays = 7.0, .peakDays = 1.5}, dice), row);
    }
}

// Flags of a good summer by the checks that a desk runs.
//
// alone  the places of the traps are not known, so that each count is held against the one before
std::map<Check, std::int64_t> flagsOf(const InventedSummer& summer, bool alone)
{
    std::vector<Trap> traps = summer.traps();
    std::vector<std::vector<Visit>> visits;
    visits.reserve(traps.size());
    SeasonToCheck season{.week = {.weekStart = std::chrono::Sunday, .countDay = std::chrono::Tuesday}};
    for (std::size_t i = 0; i < traps.size(); ++i) {
        if (alone) traps[i].latE7.reset();
        visits.push_back(summer.visitsOf(i));
        season.traps.push_back({traps[i], visits[i]});
        for (const Visit& visit : visits[i]) season.authors[visit.id] = traps[i].id;
    }
    std::map<Check, std::int64_t> flags;
    for (const Flag& flag : seasonFlags(season, summerStart + std::chrono::days{100})) ++flags[flag.check];
    return flags;
}

double saidOf(Check check)
{
    const FalseAlarms said = falseAlarmsOf(check);
    if (said.which != GoodCounts::OneIn) std::abort();
    return 1.0 / static_cast<double>(said.oneIn);
}

// What is said beside a flag, and that nothing else is flagged in good summers.
void holdWhatIsSaid(std::mt19937_64& dice)
{
    std::printf("-- as said beside the flags, k = 3\n");
    std::map<Check, std::int64_t> together;
    std::map<Check, std::int64_t> alone;
    std::int64_t counts = 0;
    for (int i = 0; i < 2 * summers; ++i) {
        const InventedSummer summer = inventSummer({}, dice);
        counts += static_cast<std::int64_t>(summer.places.size()) * summer.weeks;
        for (const auto& [check, flags] : flagsOf(summer, false)) together[check] += flags;
        for (const auto& [check, flags] : flagsOf(summer, true)) alone[check] += flags;
    }
    const auto holdSaid = [&](const char* what, std::int64_t flags, Check check) {
        hold(what, flags, counts, saidOf(check), 0.0, fine, Better::Less);
    };
    holdSaid("far above the traps around", together[Check::FarAboveAround], Check::FarAboveAround);
    holdSaid("far below the traps around", together[Check::FarBelowAround], Check::FarBelowAround);
    holdSaid("far above the visit before", alone[Check::FarAboveBefore], Check::FarAboveBefore);
    together.erase(Check::FarAboveAround);
    together.erase(Check::FarBelowAround);
    for (auto* flags : {&together, &alone}) {
        flags->erase(Check::FarAboveBefore); // of traps that have too few around
        flags->erase(Check::CatchUnlikelyLarge); // an outbreak has such
    }
    std::int64_t others = 0;
    for (const auto& flags : {together, alone})
        for (const auto& [check, count] : flags) others += count;
    hold("by any other check", others, 2 * counts, 0.0, 0.0, 0.0, Better::Less);
    if (others > 0) ++failed;
}

void holdMovedTraps(std::mt19937_64& dice)
{
    std::printf("-- two fixes of one spot\n");
    constexpr int pairs = 200'000;
    const double sigmaOfRadius = 1.0 / std::sqrt(-2.0 * std::log(0.32));
    for (const auto& [one, other] : {std::pair{5.0, 15.0}, std::pair{20.0, 20.0}, std::pair{5.0, 60.0}}) {
        std::normal_distribution<double> chance(0.0, std::hypot(one, other) * sigmaOfRadius);
        const double most = explainedDistance(Metres{one}, Metres{other}).value();
        int moved = 0;
        for (int i = 0; i < pairs; ++i) moved += std::hypot(chance(dice), chance(dice)) > most ? 1 : 0;
        const std::string what = "within " + std::to_string(std::lround(one)) + " and "
            + std::to_string(std::lround(other)) + " m";
        hold(what.c_str(), moved, pairs, saidOf(Check::MovedTrap), 0.0, 0.0, Better::Less);
    }
}

bool isHeaped(int counts, double mean, double rounded, std::mt19937_64& dice)
{
    constexpr double noise = 3.0;
    constexpr std::int64_t least = 10;
    std::bernoulli_distribution rounds(rounded);
    std::vector<Moths> noted;
    while (noted.size() < static_cast<std::size_t>(counts)) {
        const std::int64_t count = negativeBinomial(mean, noise, dice);
        if (count < least) continue;
        noted.emplace_back(rounds(dice) ? (count + 2) / 5 * 5 : count);
    }
    return digitHeapingOf(noted).isHeaped();
}

void holdDigits(std::mt19937_64& dice)
{
    constexpr int observers = 20'000;
    constexpr double observersOfTheTable = 2'000.0; // not said
    const auto share = [&](int counts, double mean, double rounded) {
        std::int64_t heaped = 0;
        for (int i = 0; i < observers; ++i) heaped += isHeaped(counts, mean, rounded, dice) ? 1 : 0;
        return heaped;
    };
    std::printf("-- digits of an observer\n");
    for (const int counts : {20, 40, 80}) {
        const std::string many = std::to_string(counts) + " counts ";
        hold((many + "of about 30, none rounded").c_str(), share(counts, 30.0, 0.0), observers,
            saidOf(Check::RoundedCounts), 0.0, 0.0, Better::Less);
        hold((many + "of about 15, none rounded").c_str(), share(counts, 15.0, 0.0), observers, 0.0075, 0.0,
            0.0, Better::Less);
    }
    for (const auto& [counts, found] : {std::pair{20, 0.49}, std::pair{40, 0.91}, std::pair{80, 0.999}})
        hold((std::to_string(counts) + " counts, 40 % rounded, found").c_str(), share(counts, 30.0, 0.4),
            observers, found, observersOfTheTable, found > 0.99 ? 0.0005 : coarse, Better::More);
}

} // namespace

int main(int argc, char** argv)
{
    const unsigned long long seed = argc > 1 ? std::strtoull(argv[1], nullptr, 10) : 20260714;
    std::mt19937_64 dice(seed);
    std::printf("seed %llu, %d summers of 100 traps and 8 weeks a row\n%-44s %10s %10s %10s %9s\n", seed,
        summers, "", "found", "table", "allowed", "trials");
    holdDice(dice);
    holdRegion(dice);
    holdWhatIsSaid(dice);
    holdMovedTraps(dice);
    holdDigits(dice);
    std::printf("%d figures are worse than the table\n", failed);
    return failed == 0 ? 0 : 1;
}
