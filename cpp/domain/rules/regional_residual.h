// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "domain/rules/flag.h"

namespace duskrow::domain {

// A count that can be held against others of its week: of one pest in one type of trap.
struct RegionalCount {
    Uuid trap;
    Uuid visit;
    LocalDay week; // first day of the reporting week it is for
    GeoPoint place;
    MothsPerWeek rate; // over the nights since the trap was last emptied
    Nights nights; // these
};

// How far a count lies from what the traps around it caught in the same week.
struct RegionalResidual {
    std::size_t count = 0; // in the counts given
    std::vector<CountNearby> around; // nearest first
    MothsPerWeek expected;
    double residual = 0.0; // of ln(1 + moths a week)
    std::optional<double> score; // over its robust spread; nothing while the season has too few counts

    [[nodiscard]] bool isFarAbove() const;
    [[nodiscard]] bool isFarBelow() const;
};

// Every count of 21 nights at most that has three traps or more around it, in the order of weeks and then as
// given. A longer one tells little of its week.
//
// Around are the six nearest traps within 80 km that were counted for the same week, each with its last count
// of it. Expected is their median of ln(1 + moths a week), moved by how this trap differed from such medians
// before: by the mean difference, shrunk by v/(v + 2) after v counts. The score is
//   (r - median r) / sqrt(S^2 + 1/(E n/7 + 1)),  S = max(0.2, 1.4826 MAD of all r),  n nights,
// and far above is beyond 2.5, far below beyond -3. Medians and MAD are those of the residuals with two moths
// a week and more expected, as soon as there are twenty: in the tails of a short flight all residuals are
// small, and S with them. One large count moves neither.
//
// counts  of one season, pest and trap type; those of one trap in the order of their days
// Source  own method, rates by simulated summers: tests/bench/checks_rates.cpp. 20 residuals, 21 nights:
//         own choice, no source
std::vector<RegionalResidual> regionalResiduals(std::span<const RegionalCount> counts);

} // namespace duskrow::domain
