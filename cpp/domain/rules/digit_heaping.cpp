// SPDX-License-Identifier: MIT
#include "domain/rules/digit_heaping.h"

#include <boost/math/special_functions/beta.hpp>

#include "domain/rules/boost_policy.h"

namespace duskrow::domain {

namespace {

constexpr std::int64_t leastCounted = 10;
constexpr std::int64_t leastCounts = 20;
constexpr double ofTheDigits = 0.2; // two of ten
constexpr double chanceAsked = 0.001;

} // namespace

double chanceOfRounded(std::int64_t rounded, std::int64_t counts)
{
    if (rounded <= 0) return 1.0;
    // The upper tail of the binomial, as an incomplete beta function.
    return boost::math::ibeta(
        static_cast<double>(rounded), static_cast<double>(counts - rounded + 1), ofTheDigits, NoThrow{});
}

bool DigitHeaping::isHeaped() const
{
    return counts >= leastCounts && chanceOfRounded(rounded, counts) < chanceAsked;
}

DigitHeaping digitHeapingOf(std::span<const Moths> counts)
{
    DigitHeaping heaping;
    for (const Moths& count : counts) {
        if (count.value() < leastCounted) continue;
        ++heaping.counts;
        if (count.value() % 5 == 0) ++heaping.rounded;
    }
    return heaping;
}

} // namespace duskrow::domain
