// SPDX-License-Identifier: MIT
#include "demo/summer.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace duskrow::demo {

using namespace duskrow::domain;

namespace {

constexpr double base = 7.0; // C
constexpr int summerDays = 153; // April to August

// Made up for a believable flight: first moths in mid-June, the peak in mid-July, the end in early August.
// Nobody has published degree-day sums for this.
constexpr double halfFlown = 610.0;
constexpr double spread = 78.0;

// A prairie summer: about 2 C in mid-April, 16 C in mid-June, 19 C in late July (invented).
double usualMean(int dayOfYear)
{
    return 3.5 + 15.5 * std::cos(2.0 * std::numbers::pi * (dayOfYear - 203) / 365.0);
}

} // namespace

Summer::Summer(int year, Dice dice) : m_first(dayOf(year, 4, 1))
{
    const double warmer = dice.normal(0.0, 0.4); // this year against others
    double spell = 0.0; // warm and cold days come in spells
    double sum = 0.0;
    m_degreeDays.reserve(summerDays + 1);
    for (int i = 0; i < summerDays; ++i) {
        m_degreeDays.push_back(sum);
        spell = 0.7 * spell + dice.normal(0.0, 1.5);
        const double mean = usualMean(91 + i) + warmer + spell;
        const double swing = dice.between(4.5, 8.0); // from the mean to the maximum and minimum
        const double maximum = mean + swing;
        const double minimum = mean - swing;
        sum += std::max(0.0, (std::max(maximum, base) + std::max(minimum, base)) / 2.0 - base);
    }
    m_degreeDays.push_back(sum);
}

double Summer::degreeDays(LocalDay day) const
{
    const auto at = std::clamp<std::int64_t>((day - m_first).count(), 0, summerDays);
    return m_degreeDays[static_cast<std::size_t>(at)];
}

double Summer::flightOver(LocalDay day) const
{
    const auto over = [](double sum) { return 1.0 / (1.0 + std::exp(-(sum - halfFlown) / spread)); };
    const double start = over(0.0);
    return (over(degreeDays(day)) - start) / (1.0 - start);
}

Millimetres Crop::canopy(LocalDay day) const
{
    const auto since = static_cast<double>((day - halfGrown).count());
    const double height = fullHeightMm / (1.0 + std::exp(-since / 8.0));
    return Millimetres{std::llround(height / 50.0) * 50};
}

} // namespace duskrow::demo
