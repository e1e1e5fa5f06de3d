// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>

#include "domain/rules/flight_posterior.h"

namespace duskrow::domain {

// The one curve of highest likelihood through the counts of one trap, for those who compare with other
// programs. Before the peak it is worthless: nothing that a person reads is made of it.
struct FlightFit {
    double centre = 0.0; // of the normal or logistic curve: mean, median and peak in one
    double scale = 0.0; // standard deviation of the normal, scale parameter of the logistic
    double size = 0.0; // moths that a trap catches over the whole flight
    double logLikelihood = 0.0; // multinomial, with the expectation where there is one
    double centreError = 0.0; // standard errors, by the curvature
    double logScaleError = 0.0;
    double misfit = 0.0; // Pearson's chi squared
    double overdispersion = 1.0; // misfit over its degrees of freedom, 1 at least
    double part = 0.0; // over at the last look
};

// shape     Normal or Logistic
// expected  weighs the centre and the logarithm of the scale beforehand; nothing: the counts alone
// Result    nothing where there are fewer than three intervals with moths in two of them, or no highest point
// is
//           found
// Source    counts of intervals as a multinomial of a distribution: Cockfield and Mahr 1994
std::optional<FlightFit> fitFlight(
    FlightShape shape, std::span<const FlightInterval> trap, const FlightPrior* expected = nullptr);

} // namespace duskrow::domain
