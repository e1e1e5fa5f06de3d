// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "domain/base/heat_method.h"
#include "domain/base/result.h"
#include "domain/base/time.h"

namespace duskrow::domain {

// How warmth is summed. Limits, temperatures and sums are all of one unit, Celsius or Fahrenheit.
struct HeatTerms {
    HeatMethod method = HeatMethod::SingleSine;
    double lower = 0.0;
    std::optional<double> upper = {}; // needed by every cut-off but None
    CutOff cutOff = CutOff::None;
};

// Errors  OutOfRange {"upper_limit", lowest, ""} when it is missing, or not above the lower limit, though
// there is
//         a cut-off; UnknownCode {"cut_off", ...} of a clamped average with any cut-off but none and
//         horizontal
Result<Done> checkTerms(const HeatTerms& terms);

// The warmth of one day as its method says, before anything is brought up to 0: an intermediate cut-off takes
// away more than there is on a very hot day.
//
// minimum, maximum  minimum <= maximum; the day's course between them is taken as even, warming then cooling
// nextMinimum       of the following day; only the double methods look at it
// Source            single sine: Baskerville and Emin 1969, Ecology 50:514; double sine: Allen 1976,
//                   Environmental Entomology 5:388; triangle: Sevacherian et al. 1977; intermediate cut-off:
//                   Roltsch et al. 1999 (all but Allen from memory; one closed form derived anew and checked
//                   by integration)
double rawDegreeDays(const HeatTerms& terms, double minimum, double maximum, double nextMinimum);

// As rawDegreeDays, never below 0.
double degreeDays(const HeatTerms& terms, double minimum, double maximum, double nextMinimum);

// A span of temperature, and a sum, in the other unit: 1.8 degrees Fahrenheit are one Celsius. A limit is a
// temperature and has the 32 besides; a sum has not.
constexpr double toFahrenheit(double celsius)
{
    return celsius * 1.8 + 32.0;
}
constexpr double toCelsius(double fahrenheit)
{
    return (fahrenheit - 32.0) / 1.8;
}

struct DayTemperature {
    LocalDay day = {};
    double minimum = 0.0;
    double maximum = 0.0;
};

struct DayHeat {
    LocalDay day = {};
    double degreeDays = 0.0; // of the day
    double total = 0.0; // up to and with it
};

// Sums rise from day to day with the rounding error carried along (Kahan 1965), so that the same days give
// the same total to the last digit on every machine that keeps to IEEE 754. The last day has no next minimum:
// its own stands in.
//
// days  ascending; a day before a hole is taken for one without a next minimum
std::vector<DayHeat> sumDegreeDays(const HeatTerms& terms, std::span<const DayTemperature> days);

} // namespace duskrow::domain
