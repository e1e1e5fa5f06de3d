// SPDX-License-Identifier: MIT
#include <chrono>
#include <cstdio>
#include <ctime>

#include "bench/figures.h"
#include "bench/summers.h"
#include "domain/rules/season_checks.h"

using namespace duskrow::domain;
using namespace duskrow::tests;

// A desk of 5,000 traps: what one week of them costs, and a season of ten.

namespace {

constexpr int traps = 5000;

double millisecondsOf(const std::function<void()>& work)
{
    const std::clock_t start = std::clock(); // of the processor: what others on the machine take is left out
    work();
    return 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

// most  0 for a case that is only noted
void aWeek(const InventedSummer& summer, const char* name, double most)
{
    const auto counts = summer.regionalCounts();
    std::size_t found = 0;
    const double took = millisecondsOf([&] { found = regionalResiduals(counts).size(); });
    if (found != counts.size()) std::abort();
    figures().limit(name, took / summer.weeks, "ms", most);
}

void aSeason(const InventedSummer& summer)
{
    const auto all = summer.traps();
    std::vector<std::vector<Visit>> visits;
    visits.reserve(all.size());
    SeasonToCheck season;
    for (std::size_t i = 0; i < all.size(); ++i) {
        visits.push_back(summer.visitsOf(i));
        season.traps.push_back({all[i], visits[i]});
        for (const Visit& visit : visits[i]) season.authors[visit.id] = all[i].id;
    }
    std::size_t found = 0;
    const double took =
        millisecondsOf([&] { found = seasonFlags(season, summerStart + std::chrono::days{100}).size(); });
    figures().note("flags of a season of 5,000 traps", static_cast<double>(found), "");
    figures().limit("all checks of that season of ten weeks", took, "ms", 1500.0);
}

} // namespace

int main()
{
    std::mt19937_64 dice(20260714);
    const SummerHabits many{.traps = traps, .weeks = 10, .fieldRangeKm = 0.0};
    InventedSummer summer = inventSummer(many, dice);
    aWeek(summer, "a week of 5,000 traps held against those around", 100.0);
    aSeason(summer);
    for (GeoPoint& place : summer.places) place.latE7 = 520'000'000;
    aWeek(summer, "the same, all along one road", 100.0);
    for (GeoPoint& place : summer.places) place = summer.places.front();
    aWeek(summer, "the same, all at one place", 0.0);
    return figures().print() ? 0 : 1;
}
