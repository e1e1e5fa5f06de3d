// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "domain/rules/dispersion_weights.h"
#include "domain/rules/frame_tally.h"
#include "domain/rules/uneven_posterior.h"

namespace duskrow::domain {

// What the counts of a walk say about the field's mean number of larvae per frame: a mixture over the unknown
// dispersion k. All that does not depend on the question is worked out once, when it is made.
//
// Model   larvae at a stop of f frames are negative binomial with mean f m and dispersion k: stops differ by
//         k, frames at one stop share its density. Frames are placed without looking, have one area, and
//         every larva in them is found. Given k the prior of m is Jeffreys' own.
// Source  for stops of equal size u = m / (m + k) given k is Beta(T + 1/2, n k) exactly, T larvae at n stops,
//         by the conjugacy of the negative binomial; checked against R 4.2.2. Stops of unequal size:
//         uneven_posterior.h
class MeanPosterior {
public:
    // tally  at least one stop
    explicit MeanPosterior(const FrameTally& tally);

    // The chance that the field's mean lies above this one; 1 for a mean of zero or less.
    [[nodiscard]] double probabilityAbove(LarvaePerFrame mean) const;

    // The mean below which the field's lies with this chance.
    //
    // probability  from 1e-6 to 1 - 1e-6, otherwise the nearer of the two
    [[nodiscard]] LarvaePerFrame quantile(double probability) const;

    // The dispersion k per stop: half of the weight below it. Small is patchy.
    [[nodiscard]] double medianDispersion() const;

private:
    [[nodiscard]] double shareAbove(double logMean) const;

    double m_larvae = 0.0;
    double m_stops = 0.0;
    double m_framesAtAStop = 1.0;
    std::vector<DispersionNode> m_nodes;
    std::optional<UnevenPosterior> m_uneven;
};

} // namespace duskrow::domain
