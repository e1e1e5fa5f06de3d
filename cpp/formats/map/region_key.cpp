// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "formats/bulletin/map_key.h"
#include "formats/map/region_picture.h"
#include "formats/map/trap_signs.h"

namespace duskrow::formats {

namespace {

constexpr double signSize = 20;

void tint(Picture& picture, const Frame& frame, Ink ink, double opacity, double stroke)
{
    picture.primitives.emplace_back(Bar{frame, ink, Fill::Solid, 0, opacity});
    for (double x = frame.left + 3; stroke > 0 && x < frame.right; x += 7)
        picture.primitives.emplace_back(
            Line{{{x, frame.top}, {x, frame.bottom}}, Ink::Unknown, stroke, false});
    picture.primitives.emplace_back(
        Line{{{frame.left, frame.top}, {frame.right, frame.top}, {frame.right, frame.bottom},
                 {frame.left, frame.bottom}, {frame.left, frame.top}},
            Ink::Unknown, 0.8, false});
}

double drawSurfaceKey(Picture& picture, const RegionWords& words, const Frame& below, double size)
{
    double y = below.top;
    for (const std::string& line : brokenIntoLines(words.chances, size, below.width())) {
        picture.primitives.emplace_back(
            Words{line, {below.left, y + size}, Anchor::Start, size, 600, Ink::Full, 0});
        y += size * 1.35;
    }
    KeyRows rows(picture, below, y + size * 0.35, size);
    for (std::size_t i = 0; i < words.chanceSteps.size() && i < 4; ++i)
        tint(picture, rows.next(words.chanceSteps[i]), tintOf(static_cast<int>(i) + 1), 1, 0);
    tint(picture, rows.next(words.littleKnown), tintOf(1), 1, 0.7);
    tint(picture, rows.next(words.notKnown), Ink::Line, 0.6, 1.6);
    return rows.bottom();
}

double drawKey(Picture& picture, const RegionWords& words, const Frame& below, double textScale)
{
    const double size = 16 * textScale;
    KeyRows rows(picture, below, below.top, size);
    const auto sign = [&](const std::string& label, TrapStanding standing, int level) {
        const Frame frame = rows.next(label);
        const Point middle{(frame.left + frame.right) / 2, (frame.top + frame.bottom) / 2};
        drawTrapSign(standing, level, middle, standing == TrapStanding::Missing ? 13 : signSize, picture);
    };
    for (std::size_t i = 0; i < words.bands.size() && i < 4; ++i)
        sign(words.bands[i], TrapStanding::Counted, static_cast<int>(i) + 1);
    if (words.bands.empty()) sign(words.noBand, TrapStanding::Counted, 0);
    sign(words.atLeast, TrapStanding::AtLeast, 0);
    sign(words.missing, TrapStanding::Missing, 0);
    double y = rows.bottom();
    for (const std::string& line : brokenIntoLines(words.bySize, size, below.width())) {
        picture.primitives.emplace_back(
            Words{line, {below.left, y + size}, Anchor::Start, size, 400, Ink::Soft, 0});
        y += size * 1.35;
    }
    if (words.chances.empty()) return y + size * 0.4;
    return drawSurfaceKey(picture, words, {below.left, y + size * 0.6, below.right, 0}, size);
}

} // namespace

Picture regionKey(const RegionWords& words, double width, double textScale)
{
    Picture picture{width, 0, words.title, {}, {}};
    picture.height = std::ceil(drawKey(picture, words, {0, 2, width, 0}, textScale));
    return picture;
}

Picture regionSheet(const RegionScene& scene, const MapGround& ground, const MapView& view,
    const RegionWords& words, double textScale)
{
    Picture picture = regionPicture(scene, ground, view, words, textScale);
    // What sticks out of the map at its foot goes under the key's ground.
    picture.primitives.emplace_back(
        Bar{{0, view.height, view.width, view.height + 2000}, Ink::Card, Fill::Solid, 0, 1});
    const double size = 16 * textScale;
    picture.primitives.emplace_back(
        Words{words.title, {10, view.height + size * 1.6}, Anchor::Start, size, 600, Ink::Full, 0});
    picture.height =
        std::ceil(drawKey(picture, words, {10, view.height + size * 2.4, view.width - 10, 0}, textScale));
    return picture;
}

} // namespace duskrow::formats
