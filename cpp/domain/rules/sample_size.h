// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "domain/base/result.h"
#include "domain/rules/frame_tally.h"

namespace duskrow::domain {

// How the counts of frames scatter around their mean m.
struct ByChance { }; // variance m: larvae strewn by chance alone. Too hopeful for clumped larvae
struct Clumped {
    double dispersion = 1.0; // k: variance m + m^2 / k
};
struct PowerLaw {
    double factor = 1.0; // a: variance a m^b (Taylor's power law)
    double exponent = 1.0; // b
};

// Frames for a standard error that is the part `precision` of the mean, rounded up; never below five.
// About two standard errors are the half width of a 95 % range.
//
// mean       larvae per frame that are expected, above zero: where there are none no number of frames is
// enough precision  standard error over mean, 0.01 to 1 Errors     OutOfRange {"mean" | "precision" |
// "dispersion" | "factor" | "exponent", lowest, highest} Source     n = variance / (D m)^2 (from memory:
// Karandinos 1976). Five at least: Canola Council of Canada
Result<Frames> framesForPrecision(LarvaePerFrame mean, double precision, ByChance scatter);
Result<Frames> framesForPrecision(LarvaePerFrame mean, double precision, Clumped scatter);
Result<Frames> framesForPrecision(LarvaePerFrame mean, double precision, PowerLaw scatter);

// The same for the half width of a 95 % range: `precision` over 1.96.
Result<Frames> framesForHalfWidth(LarvaePerFrame mean, double halfWidth, Clumped scatter);

// Standard error over mean that so many frames reach; the other way round.
//
// frames  1 to 10,000
Result<double> precisionOf(Frames frames, LarvaePerFrame mean, Clumped scatter);

inline constexpr std::int64_t fewestFrames = 5;

} // namespace duskrow::domain
