// SPDX-License-Identifier: MIT
#include "domain/rules/flight_curve.h"

#include <boost/math/distributions/gamma.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>
#include <numbers>

namespace duskrow::domain {

namespace {

// The logistic of standard deviation 1 has this scale.
const double logisticScale = std::numbers::sqrt3 / std::numbers::pi;

double gammaShape(FlightShape shape)
{
    return shape == FlightShape::Gamma16 ? 16.0 : 4.0;
}

// Of a whole shape the gamma distribution is a finite sum (Erlang), far quicker than the general function.
double erlang(int shape, double x)
{
    if (x <= 0.0) return 0.0;
    if (x > 200.0) return 1.0;
    double term = 1.0;
    double sum = 1.0;
    for (int i = 1; i < shape; ++i) {
        term *= x / i;
        sum += term;
    }
    return 1.0 - sum * std::exp(-x);
}

} // namespace

double partOver(FlightShape shape, double z)
{
    switch (shape) {
    case FlightShape::Normal:
        return 0.5 * std::erfc(-z / std::numbers::sqrt2);
    case FlightShape::Logistic:
        return 1.0 / (1.0 + std::exp(-z / logisticScale));
    case FlightShape::Gamma16:
        return erlang(16, z * 4.0 + 16.0);
    case FlightShape::Gamma4:
        return erlang(4, z * 2.0 + 4.0);
    }
    return 0.0;
}

double pointAt(FlightShape shape, double part)
{
    switch (shape) {
    case FlightShape::Normal:
        return boost::math::quantile(boost::math::normal_distribution<>(), part);
    case FlightShape::Logistic:
        return logisticScale * std::log(part / (1.0 - part));
    case FlightShape::Gamma16:
    case FlightShape::Gamma4: {
        const double a = gammaShape(shape);
        return (boost::math::quantile(boost::math::gamma_distribution<>(a), part) - a) / std::sqrt(a);
    }
    }
    return 0.0;
}

double medianOf(FlightShape shape)
{
    static const double gamma16 = pointAt(FlightShape::Gamma16, 0.5);
    static const double gamma4 = pointAt(FlightShape::Gamma4, 0.5);
    if (shape == FlightShape::Gamma16) return gamma16;
    return shape == FlightShape::Gamma4 ? gamma4 : 0.0;
}

double modeOf(FlightShape shape)
{
    const bool isGamma = shape == FlightShape::Gamma16 || shape == FlightShape::Gamma4;
    return isGamma ? -1.0 / std::sqrt(gammaShape(shape)) : 0.0; // (a - 1 - a) / sqrt(a)
}

} // namespace duskrow::domain
