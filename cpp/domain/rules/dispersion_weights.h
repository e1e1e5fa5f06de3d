// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/rules/frame_tally.h"

namespace duskrow::domain {

// One value of the dispersion k with its share of what the counts and the prior say together.
struct DispersionNode {
    double k = 1.0;
    double logPrior = 0.0; // prior and the part of the likelihood without the mean, as a logarithm
    double weight = 0.0; // after the mean is integrated out; the weights of all nodes add up to 1
};

// An equal grid in ln k over all of k that matters for these counts, 31 nodes. Where stops have unequal
// numbers of frames the weights are those at the estimated mean: good enough to choose the nodes by.
//
// tally   at least one stop
// Source  prior ln k ~ N(0, 1), median 1, 95 % from 0.14 to 7.1: own choice, since nobody has published k of
//         bertha armyworm larvae per quarter square metre; weights by the conjugacy of the negative binomial
std::vector<DispersionNode> dispersionNodes(const FrameTally& tally);

// ln of prior and likelihood of one dispersion and one mean per frame, as a density of ln m; no constant
// factor is left out that depends on k.
double logDensityOf(const FrameTally& tally, const DispersionNode& node, double logMean);

// The dispersion below which a share `probability` of the weight lies; between nodes the weight is a
// straight line over ln k.
double dispersionQuantile(const std::vector<DispersionNode>& nodes, double probability);

} // namespace duskrow::domain
