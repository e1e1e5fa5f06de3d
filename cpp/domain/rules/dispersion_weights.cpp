// SPDX-License-Identifier: MIT
#include "domain/rules/dispersion_weights.h"

#include <algorithm>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>

#include "domain/rules/boost_policy.h"

namespace duskrow::domain {

namespace {

constexpr int searchNodes = 65;
constexpr double searchReach = 8.0; // standard deviations of the prior either way
constexpr int nodeCount = 31;
constexpr double negligible = 25.0; // as a logarithm: 1.4e-11 of the largest weight

double logGamma(double x)
{
    return boost::math::lgamma(x, NoThrow());
}

double logBeta(double a, double b)
{
    return logGamma(a) + logGamma(b) - logGamma(a + b);
}

// The logarithm of the prior of ln k and of the product of Gamma(x + k) / Gamma(k) over the stops.
double logPrior(const FrameTally& tally, double logK)
{
    const double k = std::exp(logK);
    const double logGammaK = logGamma(k);
    double sum = -0.5 * logK * logK;
    for (const FrameTally::Count& count : tally.counts)
        if (count.larvae > 0.0) sum += count.stops * (logGamma(count.larvae + k) - logGammaK);
    return sum;
}

double logWeight(const FrameTally& tally, double logK, double prior)
{
    const auto larvae = static_cast<double>(tally.larvae.value());
    const auto stops = static_cast<double>(tally.stops);
    if (!tally.isEven()) {
        const double mean = (larvae + 0.5) / static_cast<double>(tally.frames.value());
        return logDensityOf(tally, {std::exp(logK), prior}, std::log(mean));
    }
    return prior + 0.5 * logK + logBeta(larvae + 0.5, stops * std::exp(logK));
}

struct Span {
    double low;
    double high;
};

// Where the weights are not negligible, found on a coarse grid.
Span spanThatMatters(const FrameTally& tally)
{
    constexpr double step = 2.0 * searchReach / (searchNodes - 1);
    std::vector<double> logs;
    for (int i = 0; i < searchNodes; ++i) {
        const double logK = -searchReach + step * i;
        logs.push_back(logWeight(tally, logK, logPrior(tally, logK)));
    }
    const double least = *std::max_element(logs.begin(), logs.end()) - negligible;
    const auto matters = [least](double log) { return log > least; };
    const auto first = std::find_if(logs.begin(), logs.end(), matters) - logs.begin();
    const auto last = logs.rend() - std::find_if(logs.rbegin(), logs.rend(), matters) - 1;
    return {-searchReach + step * static_cast<double>(first - 1),
        -searchReach + step * static_cast<double>(last + 1)};
}

} // namespace

double logDensityOf(const FrameTally& tally, const DispersionNode& node, double logMean)
{
    const double mean = std::exp(logMean);
    const auto stops = static_cast<double>(tally.stops);
    double sum = node.logPrior + stops * node.k * std::log(node.k)
        + (static_cast<double>(tally.larvae.value()) + 0.5) * logMean;
    double information = 0.0;
    for (const FrameTally::Size& size : tally.sizes) {
        const double both = node.k + size.frames * mean;
        sum -= (size.larvae + size.stops * node.k) * std::log(both);
        information += size.stops * size.frames * node.k / both;
    }
    return sum + 0.5 * std::log(information);
}

std::vector<DispersionNode> dispersionNodes(const FrameTally& tally)
{
    const Span span = spanThatMatters(tally);
    std::vector<DispersionNode> nodes;
    for (int i = 0; i < nodeCount; ++i) {
        const double logK = span.low + (span.high - span.low) * i / (nodeCount - 1);
        const double prior = logPrior(tally, logK);
        nodes.push_back({std::exp(logK), prior, logWeight(tally, logK, prior)});
    }
    const auto byWeight = [](const DispersionNode& a, const DispersionNode& b) {
        return a.weight < b.weight;
    };
    const double largest = std::max_element(nodes.begin(), nodes.end(), byWeight)->weight;
    double sum = 0.0;
    for (DispersionNode& node : nodes) sum += node.weight = std::exp(node.weight - largest);
    for (DispersionNode& node : nodes) node.weight /= sum;
    return nodes;
}

double dispersionQuantile(const std::vector<DispersionNode>& nodes, double probability)
{
    double below = 0.0;
    for (std::size_t i = 0; i + 1 < nodes.size(); ++i) {
        const double first = nodes[i].weight;
        const double second = nodes[i + 1].weight;
        const double share = 0.5 * (first + second);
        if (below + share >= probability && share > 0.0) {
            const double rest = std::max(0.0, probability - below);
            const double root = std::sqrt(std::max(0.0, first * first + 2.0 * (second - first) * rest));
            const double part = rest > 0.0 ? 2.0 * rest / (first + root) : 0.0;
            const double low = std::log(nodes[i].k);
            return std::exp(low + part * (std::log(nodes[i + 1].k) - low));
        }
        below += share;
    }
    return nodes.back().k;
}

} // namespace duskrow::domain
