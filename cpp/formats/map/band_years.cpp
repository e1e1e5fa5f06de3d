// SPDX-License-Identifier: MIT
#include "formats/map/band_years.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "formats/bulletin/map_key.h"

namespace duskrow::formats {

namespace {

constexpr double rowHeight = 26;
constexpr std::size_t levels = 4;

void drawYear(Picture& picture, const BandYear& year, const Frame& row, double scale)
{
    const auto all = std::accumulate(year.inBand.begin(), year.inBand.end(), std::size_t{0});
    double left = row.left;
    for (std::size_t i = 0; all > 0 && i < year.inBand.size() && i < levels; ++i) {
        const double width = row.width() * static_cast<double>(year.inBand[i]) / static_cast<double>(all);
        if (width <= 0) continue;
        const int level = static_cast<int>(i) + 1;
        const Frame part{left, row.top, left + width, row.bottom};
        picture.primitives.emplace_back(Bar{part, bandInk(level), Fill::Solid, 0, 1});
        const double dot = 4 * scale;
        if (width > dot * 1.45 * level + 4 * dot)
            drawDots(picture, {left + width / 2, (row.top + row.bottom) / 2}, level, dot);
        left += width;
    }
    picture.primitives.emplace_back(Line{{{row.left, row.top}, {row.right, row.top}, {row.right, row.bottom},
                                             {row.left, row.bottom}, {row.left, row.top}},
        Ink::Unknown, 1, false});
}

} // namespace

Picture bandYears(const BandYearsInput& input)
{
    Picture picture{input.width, 0, input.title, input.description, {}};
    const double size = 16 * input.textScale;
    double labels = 0;
    for (const BandYear& year : input.years) labels = std::max(labels, widthOf(year.label, size));
    // On a narrow screen with large type the year stands above its row.
    const bool isBeside = labels < input.width * 0.4;
    double y = 2;
    for (const BandYear& year : input.years) {
        const double left = isBeside ? labels + size * 0.5 : 1;
        if (!isBeside) y += size * 1.25;
        const double words = isBeside ? y + rowHeight / 2 * input.textScale + size * 0.35 : y - size * 0.3;
        picture.primitives.emplace_back(
            Words{year.label, {0, words}, Anchor::Start, size, 500, Ink::Full, 0});
        drawYear(picture, year, {left, y, input.width - 1, y + rowHeight * input.textScale}, input.textScale);
        y += (rowHeight + 8) * input.textScale;
    }
    KeyRows key(picture, {0, 0, input.width, 0}, y + size * 0.4, size);
    for (std::size_t i = 0; i < input.bands.size() && i < levels; ++i) {
        const int level = static_cast<int>(i) + 1;
        const Frame sign = key.next(input.bands[i]);
        picture.primitives.emplace_back(Bar{sign, bandInk(level), Fill::Solid, 2, 1});
        drawDots(picture, {(sign.left + sign.right) / 2, (sign.top + sign.bottom) / 2}, level, size * 0.3);
    }
    picture.height = std::ceil(key.bottom());
    return picture;
}

} // namespace duskrow::formats
