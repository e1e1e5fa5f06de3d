// SPDX-License-Identifier: MIT
#include "formats/season_scale.h"

#include <algorithm>
#include <cmath>

namespace duskrow::formats {

using domain::LocalDay;
using domain::Moths;

namespace {

constexpr double margin = 14;

double asDouble(Moths moths)
{
    return static_cast<double>(moths.value());
}

// Edges where they carry the scale, round steps where the edges lie too low to say anything about the top.
std::vector<Moths> levelsOf(const SeasonChartInput& input, double top)
{
    std::vector<Moths> levels;
    for (const SeasonBand& band : input.bands) {
        if (band.from.value() > 0 && asDouble(band.from) <= top) levels.push_back(band.from);
    }
    if (levels.empty()) return roundSteps(top);
    const double highestEdge = asDouble(levels.back());
    if (highestEdge >= top / 2) return levels;
    for (const Moths step : roundSteps(top)) {
        if (asDouble(step) > highestEdge + top / 10) levels.push_back(step);
    }
    return levels;
}

} // namespace

Moths totalOf(const std::vector<SeasonInterval>& intervals)
{
    Moths total{0};
    for (const SeasonInterval& interval : intervals) total += interval.caught;
    return total;
}

bool hasFan(const SeasonChartInput& input)
{
    return input.fan && !input.intervals.empty() && input.intervals.back().to < input.lastDay;
}

double topOfScale(const SeasonChartInput& input)
{
    constexpr double least = 10; // one moth shall not look like an outbreak
    if (input.intervals.empty()) {
        return input.bands.empty() ? least : std::max(least, asDouble(input.bands.back().from) * 1.25);
    }
    double content = asDouble(totalOf(input.intervals));
    if (input.fan && hasFan(input)) content = std::max(content, asDouble(input.fan->high));
    double top = std::max(least, content * 1.3);
    for (const SeasonBand& band : input.bands) {
        const double edge = asDouble(band.from);
        if (edge <= content) continue;
        if (content >= edge / 4) top = std::max(top, edge * 1.15);
        break;
    }
    return top;
}

std::vector<Moths> roundSteps(double top)
{
    const double rough = std::max(1.0, top / 4);
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    const auto fits = [rough, power](double factor) { return factor * power >= rough; };
    const double factor = fits(1) ? 1 : fits(2) ? 2 : fits(5) ? 5 : 10;
    const auto step = std::llround(factor * power);
    std::vector<Moths> steps;
    for (long long level = step; static_cast<double>(level) <= top; level += step) steps.emplace_back(level);
    return steps;
}

double SeasonScale::x(LocalDay day) const
{
    const auto gone = static_cast<double>((day - firstDay).count());
    return plot.left + plot.width() * std::clamp(gone / days, 0.0, 1.0);
}

double SeasonScale::y(double moths) const
{
    return plot.bottom - plot.height() * std::clamp(moths / top, 0.0, 1.0);
}

Frame frameOfBand(const std::vector<SeasonBand>& bands, std::size_t i, const SeasonScale& scale)
{
    const double upper = i + 1 < bands.size() ? scale.y(bands[i + 1].from) : scale.plot.top;
    return {scale.plot.left, upper, scale.plot.right, scale.y(bands[i].from)};
}

SeasonScale seasonScale(const SeasonChartInput& input)
{
    SeasonScale scale;
    scale.firstDay = input.firstDay;
    scale.days = std::max(1.0, static_cast<double>((input.lastDay - input.firstDay).count()));
    scale.top = topOfScale(input);
    scale.levels = levelsOf(input, scale.top);
    // On a narrow picture the words stop growing before they leave no room for the curve.
    scale.smallSize = std::min(13 * input.textScale, std::max(13.0, input.width / 16));
    scale.size = std::min(16 * input.textScale, std::max(16.0, input.width / 13));
    double widest = widthOf("0", scale.smallSize);
    for (const Moths level : scale.levels) {
        widest = std::max(widest, widthOf(numberText(input, level), scale.smallSize));
    }
    scale.plot = {
        margin + widest + 6, margin, input.width - margin, input.height - margin - scale.smallSize * 1.6};
    return scale;
}

std::string numberText(const SeasonChartInput& input, Moths moths)
{
    return input.number ? input.number(moths) : std::to_string(moths.value());
}

} // namespace duskrow::formats
