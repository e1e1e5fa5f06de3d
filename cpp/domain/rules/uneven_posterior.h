// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/rules/dispersion_weights.h"
#include "domain/rules/frame_tally.h"

namespace duskrow::domain {

// The mean per frame where stops have unequal numbers of frames. No closed form is left: the area enters as
// the exposure of each stop, and density and dispersion are integrated on a grid, closest around the
// estimate.
//
// Source  likelihood of the negative binomial with mean f m at a stop of f frames; the prior of m given k is
//         Jeffreys' for these stops, the square root of sum of f k / (m (k + f m)); derived, checked against
//         a plain grid in Python
class UnevenPosterior {
public:
    // nodes  of the tally; get their weights anew
    UnevenPosterior(const FrameTally& tally, std::vector<DispersionNode>& nodes);

    // The chance that ln of the field's mean per frame lies above `logMean`.
    [[nodiscard]] double probabilityAbove(double logMean) const;

private:
    [[nodiscard]] double logMeanAt(double place) const;

    double m_centre = 0.0; // of ln m
    double m_scale = 1.0;
    double m_first = 0.0; // place of the first grid point: ln m = centre + scale * sinh(place)
    double m_step = 0.0;
    std::vector<double> m_above; // at every second grid point
    std::vector<double> m_density; // of the place, at the same points
};

} // namespace duskrow::domain
