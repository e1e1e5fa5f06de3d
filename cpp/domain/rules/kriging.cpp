// SPDX-License-Identifier: MIT
#include "domain/rules/kriging.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

namespace duskrow::domain {

namespace {

using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;

// The covariance between the values and some places, without the nugget: one column a place.
Matrix covarianceWith(const Vector& east, const Vector& north, std::span<const PlaneOffset> places,
    const Covariance& covariance)
{
    Matrix columns(east.size(), static_cast<Eigen::Index>(places.size()));
    for (Eigen::Index i = 0; i < columns.cols(); ++i) {
        const PlaneOffset& place = places[static_cast<std::size_t>(i)];
        const auto distance =
            ((east.array() - place.eastMetres).square() + (north.array() - place.northMetres).square())
                .sqrt();
        columns.col(i) = covariance.sill * (distance * (-1 / covariance.range.value())).exp();
    }
    return columns;
}

} // namespace

struct Kriging::Solved {
    std::vector<PlacedValue> values;
    Covariance covariance;
    Vector east;
    Vector north;
    Eigen::LLT<Matrix> factor; // of the covariance matrix, the nugget on its diagonal
    Vector ones; // the matrix solved for ones
    double sumOfOnes = 0;
    double mean = 0;
    Vector weights; // the matrix solved for the values less the mean
};

Kriging::Kriging(std::unique_ptr<Solved> solved) : m_solved(std::move(solved))
{
}
Kriging::Kriging(Kriging&&) noexcept = default;
Kriging& Kriging::operator=(Kriging&&) noexcept = default;
Kriging::~Kriging() = default;

std::optional<Kriging> Kriging::from(std::vector<PlacedValue> values, const Covariance& covariance)
{
    auto solved = std::make_unique<Solved>();
    const auto size = static_cast<Eigen::Index>(values.size());
    solved->east.resize(size);
    solved->north.resize(size);
    Vector observed(size);
    std::vector<PlaneOffset> places;
    for (Eigen::Index i = 0; i < size; ++i) {
        const PlacedValue& value = values[static_cast<std::size_t>(i)];
        places.push_back(value.place);
        solved->east[i] = value.place.eastMetres;
        solved->north[i] = value.place.northMetres;
        observed[i] = value.value;
    }
    Matrix matrix = covarianceWith(solved->east, solved->north, places, covariance);
    matrix.diagonal().array() += covariance.nugget;
    solved->factor.compute(matrix);
    if (solved->factor.info() != Eigen::Success) return std::nullopt;
    solved->ones = solved->factor.solve(Vector::Ones(size));
    solved->sumOfOnes = solved->ones.sum();
    solved->mean = solved->ones.dot(observed) / solved->sumOfOnes;
    solved->weights = solved->factor.solve((observed.array() - solved->mean).matrix());
    if (!solved->weights.allFinite()) return std::nullopt;
    solved->values = std::move(values);
    solved->covariance = covariance;
    return Kriging(std::move(solved));
}

Kriged Kriging::at(PlaneOffset place) const
{
    return at(std::span(&place, 1)).front();
}

std::vector<double> Kriging::valuesAt(std::span<const PlaneOffset> places) const
{
    constexpr std::size_t block = 256; // columns that stay in the cache
    std::vector<double> values;
    values.reserve(places.size());
    for (std::size_t from = 0; from < places.size(); from += block) {
        const auto some = places.subspan(from, std::min(block, places.size() - from));
        const Matrix columns = covarianceWith(m_solved->east, m_solved->north, some, m_solved->covariance);
        const Vector expected = (columns.transpose() * m_solved->weights).array() + m_solved->mean;
        values.insert(values.end(), expected.begin(), expected.end());
    }
    return values;
}

std::vector<Kriged> Kriging::at(std::span<const PlaneOffset> places) const
{
    constexpr std::size_t block = 256;
    const Solved& solved = *m_solved;
    std::vector<Kriged> all;
    all.reserve(places.size());
    for (std::size_t from = 0; from < places.size(); from += block) {
        const auto some = places.subspan(from, std::min(block, places.size() - from));
        Matrix columns = covarianceWith(solved.east, solved.north, some, solved.covariance);
        const Vector expected = (columns.transpose() * solved.weights).array() + solved.mean;
        const Vector share = columns.transpose() * solved.ones;
        solved.factor.matrixL().solveInPlace(columns);
        const Vector known = columns.colwise().squaredNorm();
        for (Eigen::Index i = 0; i < expected.size(); ++i) {
            const double ofMean = (1 - share[i]) * (1 - share[i]) / solved.sumOfOnes;
            const double field = std::max(0.0, solved.covariance.sill - known[i] + ofMean);
            all.push_back({expected[i], field + solved.covariance.nugget, field});
        }
    }
    return all;
}

LeftOut Kriging::leaveOneOut() const
{
    const auto size = static_cast<Eigen::Index>(m_solved->values.size());
    Matrix lower = Matrix::Identity(size, size);
    m_solved->factor.matrixL().solveInPlace(lower);
    const Vector inverse = lower.colwise().squaredNorm(); // its diagonal
    LeftOut left;
    for (Eigen::Index i = 0; i < size; ++i) {
        // The diagonal of the inverse less what the unknown mean takes; the weights are that matrix times the
        // values already.
        const double precision = inverse[i] - m_solved->ones[i] * m_solved->ones[i] / m_solved->sumOfOnes;
        const double residual = m_solved->weights[i] / precision;
        left.rootMeanSquare += residual * residual;
        left.meanSquareOfScore += residual * residual * precision;
    }
    left.rootMeanSquare = std::sqrt(left.rootMeanSquare / static_cast<double>(size));
    left.meanSquareOfScore /= static_cast<double>(size);
    return left;
}

const Covariance& Kriging::covariance() const
{
    return m_solved->covariance;
}

std::span<const PlacedValue> Kriging::values() const
{
    return m_solved->values;
}

} // namespace duskrow::domain
