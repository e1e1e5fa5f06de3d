// SPDX-License-Identifier: MIT
#pragma once

#include <random>
#include <vector>

#include "domain/records/trap.h"
#include "domain/records/visit.h"
#include "domain/rules/regional_residual.h"

namespace duskrow::tests {

// How invented summers are made. Moths over a region of 400 by 300 km: the logarithm of a trap's whole catch
// is a smooth field (exponential covariance), its flight a normal curve, each count a negative binomial.
struct SummerHabits {
    int traps = 100;
    int weeks = 8;
    double noise = 3.0; // k of the negative binomial: the smaller, the wilder
    double wholeCatch = 300.0; // median of the region
    double fieldDeviation = 1.0; // of the logarithm
    double fieldRangeKm = 60.0; // 0: every trap by itself
    double flightDays = 10.0; // standard deviation of the flight
    double peakDays = 2.0; // by which the peak of each trap differs
};

// One summer of weekly counts, every one of them good.
struct InventedSummer {
    int weeks = 0;
    std::vector<domain::GeoPoint> places; // of the traps
    std::vector<std::vector<double>> means; // by trap and week
    std::vector<std::vector<std::int64_t>> counts;

    [[nodiscard]] std::vector<domain::RegionalCount> regionalCounts() const; // by trap, then by week
    // The same as records of traps and of visits.
    [[nodiscard]] std::vector<domain::Trap> traps() const;
    [[nodiscard]] std::vector<domain::Visit> visitsOf(std::size_t trap) const;
};

std::int64_t negativeBinomial(double mean, double noise, std::mt19937_64& dice);
InventedSummer inventSummer(const SummerHabits& habits, std::mt19937_64& dice);

domain::Uuid summerTrap(std::size_t trap);
domain::Uuid summerVisit(std::size_t trap, int week);
inline constexpr domain::LocalDay summerStart = domain::dayOf(2026, 6, 7); // a Sunday

} // namespace duskrow::tests
