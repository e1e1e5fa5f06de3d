// SPDX-License-Identifier: MIT
#include <Eigen/Dense>
#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <cmath>
#include <numbers>

#include "domain/rules/kriging.h"

namespace duskrow::domain {

namespace {

using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;

constexpr std::size_t mostFitted = 120; // values: each trial costs the cube of their number
constexpr double expectedRange = 60'000; // m
constexpr double spreadOfRange = 0.7; // of its logarithm
constexpr double expectedNugget = 0.5; // of the sill
constexpr double spreadOfNugget = 1.0;

// The places and values, worked out once for many trials.
struct Trials {
    Matrix distances;
    Vector values;

    explicit Trials(std::span<const PlacedValue> all)
        : distances(static_cast<Eigen::Index>(all.size()), static_cast<Eigen::Index>(all.size())),
          values(static_cast<Eigen::Index>(all.size()))
    {
        for (Eigen::Index i = 0; i < values.size(); ++i) {
            const PlacedValue& one = all[static_cast<std::size_t>(i)];
            values[i] = one.value;
            for (Eigen::Index j = 0; j <= i; ++j) {
                const PlaneOffset& other = all[static_cast<std::size_t>(j)].place;
                distances(i, j) = distances(j, i) = std::hypot(
                    one.place.eastMetres - other.eastMetres, one.place.northMetres - other.northMetres);
            }
        }
    }
};

// What is left of the values when a covariance is divided by its sill.
struct Trial {
    double logDeterminant = 0;
    double sumOfOnes = 0;
    double quadratic = 0; // of the values less their mean
};

std::optional<Trial> tryOut(const Trials& trials, double range, double nuggetOfSill)
{
    Matrix matrix = (trials.distances.array() * (-1 / range)).exp();
    matrix.diagonal().array() += nuggetOfSill;
    const Eigen::LLT<Matrix> factor(matrix);
    if (factor.info() != Eigen::Success) return std::nullopt;
    Vector ones = Vector::Ones(trials.values.size());
    Vector values = trials.values;
    factor.matrixL().solveInPlace(ones);
    factor.matrixL().solveInPlace(values);
    Trial trial;
    trial.logDeterminant = 2 * factor.matrixLLT().diagonal().array().log().sum();
    trial.sumOfOnes = ones.squaredNorm();
    const double mean = ones.dot(values) / trial.sumOfOnes;
    trial.quadratic = (values - mean * ones).squaredNorm();
    return trial;
}

double penaltyOf(double range, double nuggetOfSill)
{
    const double ofRange = std::log(range / expectedRange) / spreadOfRange;
    const double ofNugget = std::log(nuggetOfSill / expectedNugget) / spreadOfNugget;
    return 0.5 * (ofRange * ofRange + ofNugget * ofNugget);
}

double likelihoodOf(const Trial& trial, double sill, double size, Likelihood likelihood)
{
    const double free = likelihood == Likelihood::Maximum ? size : size - 1;
    double sum = trial.logDeterminant + size * std::log(sill) + trial.quadratic / sill
        + free * std::log(2 * std::numbers::pi);
    if (likelihood != Likelihood::Maximum) sum += std::log(trial.sumOfOnes / sill);
    return 0.5 * sum;
}

} // namespace

std::optional<double> negativeLogLikelihood(
    std::span<const PlacedValue> values, const Covariance& covariance, Likelihood likelihood)
{
    const double nugget = covariance.nugget / covariance.sill;
    const auto trial = tryOut(Trials(values), covariance.range.value(), nugget);
    if (!trial) return std::nullopt;
    const double plain =
        likelihoodOf(*trial, covariance.sill, static_cast<double>(values.size()), likelihood);
    return likelihood == Likelihood::Penalised ? plain + penaltyOf(covariance.range.value(), nugget) : plain;
}

std::optional<Covariance> fitCovariance(std::span<const PlacedValue> values)
{
    if (values.size() < 3) return std::nullopt;
    const auto same = [&](const PlacedValue& one) { return one.value == values.front().value; };
    if (std::all_of(values.begin(), values.end(), same)) return std::nullopt;
    // Of very many every so-manyth, in their order.
    std::vector<PlacedValue> some;
    const std::size_t step = (values.size() + mostFitted - 1) / mostFitted;
    for (std::size_t i = 0; i < values.size(); i += step) some.push_back(values[i]);
    const Trials trials(some);
    const auto size = static_cast<double>(some.size());
    const auto bestSill = [&](const Trial& trial) { return trial.quadratic / (size - 1); };
    const auto cost = [&](double logRange, double logNugget) {
        const double range = std::exp(logRange);
        const double nugget = std::exp(logNugget);
        const auto trial = tryOut(trials, range, nugget);
        if (!trial) return std::numeric_limits<double>::max();
        return likelihoodOf(*trial, bestSill(*trial), size, Likelihood::Restricted)
            + penaltyOf(range, nugget);
    };
    // The best nugget for each range, and the best range of these.
    constexpr int bits = 24; // half of what a double holds is all that a minimum shows
    const auto nuggetFor = [&](double logRange) {
        return boost::math::tools::brent_find_minima(
            [&](double logNugget) { return cost(logRange, logNugget); }, std::log(0.005), std::log(50.0),
            bits);
    };
    const auto best =
        boost::math::tools::brent_find_minima([&](double logRange) { return nuggetFor(logRange).second; },
            std::log(1'000.0), std::log(1'000'000.0), bits);
    const double range = std::exp(best.first);
    const double nugget = std::exp(nuggetFor(best.first).first);
    const auto trial = tryOut(trials, range, nugget);
    if (!trial) return std::nullopt;
    return Covariance{bestSill(*trial), Metres{range}, nugget * bestSill(*trial)};
}

} // namespace duskrow::domain
