// SPDX-License-Identifier: MIT
#include "formats/bulletin/map_key.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "formats/frame_map.h"

namespace duskrow::formats {

namespace {

constexpr int levels = 4;

Point middleOf(const Frame& frame)
{
    return {(frame.left + frame.right) / 2, (frame.top + frame.bottom) / 2};
}

void outline(Picture& picture, const Frame& frame, double width)
{
    picture.primitives.emplace_back(
        Line{{{frame.left, frame.top}, {frame.right, frame.top}, {frame.right, frame.bottom},
                 {frame.left, frame.bottom}, {frame.left, frame.top}},
            Ink::Full, width, false});
}

double drawScale(Picture& picture, const Frame& below, double size, double small, double pixelsPerMetre)
{
    constexpr double kilometre = 1000;
    const double length = roundLength(domain::Metres{below.width() / 3 / pixelsPerMetre});
    const double pixels = length * pixelsPerMetre;
    const std::string label = length < kilometre ? std::to_string(std::llround(length)) + " m"
                                                 : std::to_string(std::llround(length / kilometre)) + " km";
    const double y = below.top + size;
    const double tick = size * 0.3;
    picture.primitives.emplace_back(
        Line{{{1, y - tick}, {1, y}, {1 + pixels, y}, {1 + pixels, y - tick}}, Ink::Full, 1.5, false});
    picture.primitives.emplace_back(
        Words{label, {pixels + size * 0.6, y}, Anchor::Start, small, 400, Ink::Full, 0});
    return y + size * 0.8;
}

} // namespace

Frame KeyRows::next(const std::string& label)
{
    const double sign = m_small * 2.2;
    const double width = sign + m_small * 0.5 + widthOf(label, m_small) + m_small;
    if (m_x > m_below.left && m_x + width > m_below.right) {
        m_x = m_below.left;
        m_y += m_small * 1.8;
    }
    const Frame frame{m_x + 1, m_y, m_x + sign, m_y + m_small * 1.25};
    m_picture.primitives.emplace_back(
        Words{label, {m_x + sign + m_small * 0.5, m_y + m_small}, Anchor::Start, m_small, 400, Ink::Full, 0});
    m_x += width;
    return frame;
}

Ink bandInk(int level)
{
    constexpr std::array inks{Ink::Band1, Ink::Band2, Ink::Band3, Ink::Band4};
    return inks.at(static_cast<std::size_t>(std::clamp(level, 1, levels) - 1));
}

Ink tintOf(int level)
{
    constexpr std::array inks{Ink::Tint1, Ink::Tint2, Ink::Tint3, Ink::Tint4};
    return inks.at(static_cast<std::size_t>(std::clamp(level, 1, levels) - 1));
}

void drawDots(Picture& picture, Point middle, int level, double size)
{
    const int dots = std::clamp(level, 1, levels);
    const double step = size * 1.45;
    const double half = step * (dots - 1) / 2;
    picture.primitives.emplace_back(
        Bar{{middle.x - half - size, middle.y - size, middle.x + half + size, middle.y + size}, Ink::Card,
            Fill::Solid, size, 0.9});
    for (int i = 0; i < dots; ++i)
        picture.primitives.emplace_back(
            Mark{{middle.x - half + step * i, middle.y}, MarkShape::Circle, size, Ink::Full, false});
}

double drawMapKey(Picture& picture, const RegionMapInput& input, const Frame& below, double size,
    double small, double pixelsPerMetre)
{
    KeyRows key(picture, below, drawScale(picture, below, size, small, pixelsPerMetre), small);
    for (std::size_t i = 0; i < input.bands.size() && i < levels; ++i) {
        const int level = static_cast<int>(i) + 1;
        const Frame sign = key.next(input.bands[i]);
        picture.primitives.emplace_back(Bar{sign, bandInk(level), Fill::Solid, 2, 1});
        drawDots(picture, middleOf(sign), level, small * 0.3);
    }
    const bool hasUnknown = std::any_of(
        input.districts.begin(), input.districts.end(), [](const MapDistrict& one) { return !one.level; });
    if (hasUnknown) {
        const Frame sign = key.next(input.unknownLabel);
        picture.primitives.emplace_back(Bar{sign, Ink::Line, Fill::Hatched, 0, 1});
        outline(picture, sign, 0.8);
    }
    if (!input.cells.empty()) outline(picture, key.next(input.cellLabel), 0.8);
    if (!input.traps.empty()) {
        const Frame atLeast = key.next(input.atLeastLabel);
        picture.primitives.emplace_back(
            Mark{middleOf(atLeast), MarkShape::Circle, small, Ink::CatchBar, true});
        const Frame missing = key.next(input.missingLabel);
        picture.primitives.emplace_back(Mark{middleOf(missing), MarkShape::Diamond, 9, Ink::Unknown, true});
    }
    return key.bottom();
}

} // namespace duskrow::formats
