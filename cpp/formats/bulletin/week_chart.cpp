// SPDX-License-Identifier: MIT
#include "formats/bulletin/week_chart.h"

#include <algorithm>

namespace duskrow::formats {

using domain::Moths;

Picture weekChart(const WeekChartInput& input)
{
    constexpr std::size_t most = 20;
    constexpr double widest = 64;
    Picture picture{input.width, input.height, input.title, input.description, {}};
    if (input.weeks.empty()) return picture;
    const std::size_t first = input.weeks.size() > most ? input.weeks.size() - most : 0;
    const double small = 12.5 * input.textScale;
    const double base = input.height - small * 1.8;
    const double top = small * 2;
    double highest = 1;
    for (const WeekBar& week : input.weeks)
        if (week.median) highest = std::max(highest, static_cast<double>(week.median->value()));
    const double step = std::min(widest, input.width / static_cast<double>(input.weeks.size() - first));
    // Labels below and figures above are thinned out until they have room; the last one always stands.
    const auto every = [&](auto widthOfOne) {
        double widestWords = 1;
        for (std::size_t i = first; i < input.weeks.size(); ++i)
            widestWords = std::max(widestWords, widthOfOne(input.weeks[i]));
        return std::max<std::size_t>(1, static_cast<std::size_t>((widestWords + small * 0.5) / step + 1));
    };
    const std::size_t everyLabel = every([&](const WeekBar& week) { return widthOf(week.label, small); });
    const std::size_t everyFigure = every([&](const WeekBar& week) { return widthOf(week.words, small); });
    for (std::size_t i = first; i < input.weeks.size(); ++i) {
        const WeekBar& week = input.weeks[i];
        const bool isLast = i + 1 == input.weeks.size();
        const std::size_t fromLast = input.weeks.size() - 1 - i;
        const double left = step * static_cast<double>(i - first);
        const double middle = left + step / 2;
        const Frame column{left + step * 0.15, top, left + step * 0.85, base};
        double y = base - 4;
        if (!week.median) {
            picture.primitives.emplace_back(
                Bar{{column.left, base - small * 2, column.right, base}, Ink::Line, Fill::Hatched, 0, 1});
        } else {
            y = base - (base - top) * static_cast<double>(week.median->value()) / highest;
            picture.primitives.emplace_back(Bar{{column.left, y, column.right, base},
                isLast ? Ink::Curve : Ink::CatchBar, Fill::Solid, 2, 1});
            if (fromLast % everyFigure == 0)
                picture.primitives.emplace_back(Words{
                    week.words, {middle, y - 4}, Anchor::Middle, small, isLast ? 700 : 400, Ink::Full, 0});
        }
        if (fromLast % everyLabel == 0)
            picture.primitives.emplace_back(Words{week.label, {middle, base + small * 1.3}, Anchor::Middle,
                small, isLast ? 700 : 400, Ink::Full, 0});
    }
    picture.primitives.emplace_back(Line{
        {{0, base}, {step * static_cast<double>(input.weeks.size() - first), base}}, Ink::Full, 1.5, false});
    return picture;
}

} // namespace duskrow::formats
