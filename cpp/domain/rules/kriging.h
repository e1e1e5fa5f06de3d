// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "domain/base/units.h"
#include "domain/rules/local_plane.h"

// Ordinary kriging with an exponential covariance: how alike the logarithms of catches are by how far traps
// stand apart, and what that says of places in between.
// Source  G. Matheron, 1963, and N. Cressie, Statistics for Spatial Data, 1993, from memory; checked against
//         published software by golden values
namespace duskrow::domain {

// A value at a place of the plane.
struct PlacedValue {
    PlaneOffset place;
    double value = 0;
};

// sill * exp(-distance / range), and the nugget on top at distance 0: what two traps side by side differ by.
struct Covariance {
    double sill = 0;
    Metres range{0};
    double nugget = 0;
};

enum class Likelihood {
    Maximum,
    Restricted, // free of the unknown mean
    Penalised, // restricted, with weak expectations of range and nugget, without which few traps have no
               // optimum
};

// The negative logarithm of how likely the values are; the mean is profiled out. Nothing where the covariance
// matrix of these places is not positive definite (two values at one place, and no nugget).
//
// values  at least two
std::optional<double> negativeLogLikelihood(
    std::span<const PlacedValue> values, const Covariance& covariance, Likelihood likelihood);

// The covariance under which the values are likeliest, penalised: the logarithm of the range is expected at
// ln 60 km (standard deviation 0.7), that of nugget / sill at ln 0.5 (1). Nothing where all values are the
// same or there are fewer than three.
std::optional<Covariance> fitCovariance(std::span<const PlacedValue> values);

// What is expected at a place.
struct Kriged {
    double value = 0;
    double varianceOfOne = 0; // of a further trap there: with the nugget
    double varianceOfField = 0; // of what traps there have in common: without it
};

struct LeftOut {
    double rootMeanSquare = 0; // of value less what the others expect there
    double meanSquareOfScore =
        0; // the same squared, in units of its variance; 1 when the variances are right
};

class Kriging {
public:
    // Nothing where the covariance matrix is not positive definite.
    //
    // values  at least two
    static std::optional<Kriging> from(std::vector<PlacedValue> values, const Covariance& covariance);

    Kriging(Kriging&&) noexcept;
    Kriging& operator=(Kriging&&) noexcept;
    ~Kriging();

    [[nodiscard]] Kriged at(PlaneOffset place) const;
    // As `at` for many places, without the variances.
    [[nodiscard]] std::vector<double> valuesAt(std::span<const PlaneOffset> places) const;
    // As `at` for many places: one matrix is solved for many at once.
    [[nodiscard]] std::vector<Kriged> at(std::span<const PlaneOffset> places) const;
    // Each value held against the others, without fitting again.
    // Source  O. Dubrule, 1983, from memory
    [[nodiscard]] LeftOut leaveOneOut() const;
    [[nodiscard]] const Covariance& covariance() const;
    [[nodiscard]] std::span<const PlacedValue> values() const;

private:
    struct Solved;
    explicit Kriging(std::unique_ptr<Solved> solved);

    std::unique_ptr<Solved> m_solved;
};

} // namespace duskrow::domain
