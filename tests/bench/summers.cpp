// SPDX-License-Identifier: MIT
#include "bench/summers.h"

#include <cmath>
#include <numbers>

namespace duskrow::tests {

using namespace duskrow::domain;

namespace {

constexpr double widthKm = 400.0;
constexpr double heightKm = 300.0;
constexpr double kmALatitude = 111.2;

struct Spot {
    double eastKm;
    double northKm;
};

GeoPoint placeOf(Spot spot)
{
    const double latitude = 50.7 + spot.northKm / kmALatitude;
    const double kmALongitude = kmALatitude * std::cos(latitude * std::numbers::pi / 180.0);
    return {static_cast<std::int32_t>(std::lround(latitude * 1e7)),
        static_cast<std::int32_t>(std::lround((-107.0 + spot.eastKm / kmALongitude) * 1e7))};
}

double normal(std::mt19937_64& dice)
{
    return std::normal_distribution<double>(0.0, 1.0)(dice);
}

// A field of standard normal values at the spots: the Cholesky root of their covariance times chance. Without
// a range each spot is by itself.
std::vector<double> smoothField(const std::vector<Spot>& spots, double rangeKm, std::mt19937_64& dice)
{
    const std::size_t n = spots.size();
    std::vector<double> chance(n);
    for (double& value : chance) value = normal(dice);
    if (rangeKm <= 0.0) return chance;
    std::vector<std::vector<double>> root(n, std::vector<double>(n, 0.0));
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j <= i; ++j) {
            const double apart =
                std::hypot(spots[i].eastKm - spots[j].eastKm, spots[i].northKm - spots[j].northKm);
            double rest = std::exp(-apart / rangeKm);
            for (std::size_t k = 0; k < j; ++k) rest -= root[i][k] * root[j][k];
            root[i][j] = i == j ? std::sqrt(std::max(rest, 1e-12)) : rest / root[j][j];
        }
    std::vector<double> field(n, 0.0);
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j <= i; ++j) field[i] += root[i][j] * chance[j];
    return field;
}

double normalBelow(double x)
{
    return std::erfc(-x / std::numbers::sqrt2) / 2.0;
}

Uuid idOf(std::uint8_t kind, std::size_t number)
{
    Uuid id;
    id.bytes[0] = kind;
    for (std::size_t i = 0; i < 4; ++i) id.bytes[15 - i] = static_cast<std::uint8_t>(number >> (8 * i));
    return id;
}

constexpr std::chrono::days week{7};

} // namespace

Uuid summerTrap(std::size_t trap)
{
    return idOf(1, trap);
}

Uuid summerVisit(std::size_t trap, int inWeek)
{
    return idOf(2, trap * 100 + static_cast<std::size_t>(inWeek));
}

std::int64_t negativeBinomial(double mean, double noise, std::mt19937_64& dice)
{
    const double density = std::gamma_distribution<double>(noise, mean / noise)(dice);
    return density > 0.0 ? std::poisson_distribution<std::int64_t>(density)(dice) : 0;
}

InventedSummer inventSummer(const SummerHabits& habits, std::mt19937_64& dice)
{
    std::uniform_real_distribution<double> even(0.0, 1.0);
    InventedSummer summer{.weeks = habits.weeks, .places = {}, .means = {}, .counts = {}};
    std::vector<Spot> spots;
    for (int trap = 0; trap < habits.traps; ++trap) {
        spots.push_back({widthKm * even(dice), heightKm * even(dice)});
        summer.places.push_back(placeOf(spots.back()));
    }
    const std::vector<double> field = smoothField(spots, habits.fieldRangeKm, dice);
    const double peak = 7.0 * habits.weeks / 2.0 + 2.0 * normal(dice);
    for (const double here : field) {
        const double whole = habits.wholeCatch * std::exp(habits.fieldDeviation * here);
        const double ownPeak = peak + habits.peakDays * normal(dice);
        std::vector<double>& means = summer.means.emplace_back();
        std::vector<std::int64_t>& counts = summer.counts.emplace_back();
        for (int inWeek = 0; inWeek < habits.weeks; ++inWeek) {
            const double from = normalBelow((7.0 * inWeek - ownPeak) / habits.flightDays);
            const double to = normalBelow((7.0 * (inWeek + 1) - ownPeak) / habits.flightDays);
            means.push_back(whole * (to - from));
            counts.push_back(negativeBinomial(means.back(), habits.noise, dice));
        }
    }
    return summer;
}

std::vector<RegionalCount> InventedSummer::regionalCounts() const
{
    std::vector<RegionalCount> all;
    for (std::size_t trap = 0; trap < places.size(); ++trap)
        for (int inWeek = 0; inWeek < weeks; ++inWeek)
            all.push_back(
                {summerTrap(trap), summerVisit(trap, inWeek), summerStart + week * inWeek, places[trap],
                    MothsPerWeek{static_cast<double>(counts[trap][static_cast<std::size_t>(inWeek)])},
                    Nights{7}});
    return all;
}

std::vector<Trap> InventedSummer::traps() const
{
    std::vector<Trap> all;
    for (std::size_t number = 0; number < places.size(); ++number) {
        Trap& trap = all.emplace_back();
        trap.id = summerTrap(number);
        trap.pest = "moth";
        trap.trapType = "bucket";
        trap.setDay = summerStart - std::chrono::days{5}; // a Tuesday: counts cover seven nights
        trap.latE7 = places[number].latE7;
        trap.lonE7 = places[number].lonE7;
    }
    return all;
}

std::vector<Visit> InventedSummer::visitsOf(std::size_t trap) const
{
    std::vector<Visit> all;
    for (int inWeek = 0; inWeek < weeks; ++inWeek) {
        Visit& visit = all.emplace_back();
        visit.id = summerVisit(trap, inWeek);
        visit.trap = summerTrap(trap);
        visit.day = summerStart + week * inWeek + std::chrono::days{2};
        visit.outcome = Outcome::Counted;
        visit.pest = Moths{counts[trap][static_cast<std::size_t>(inWeek)]};
        visit.emptied = true;
    }
    return all;
}

} // namespace duskrow::tests
