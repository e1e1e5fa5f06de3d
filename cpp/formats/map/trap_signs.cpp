// SPDX-License-Identifier: MIT
#include "formats/map/trap_signs.h"

#include <algorithm>
#include <cmath>

#include "formats/bulletin/map_key.h"

namespace duskrow::formats {

using namespace domain;

namespace {

constexpr double least = 20; // pixels across, of a trap that caught nothing
constexpr double growth = 18; // to the trap that caught most
constexpr double dot = 3.4;
constexpr double leastForDots = 17; // pixels across
constexpr double missingSize = 13;
constexpr double covered = 4; // pixels: signs as near as this lie on each other

// The grid of spots that are taken, so that no more is drawn than can be told apart.
class Taken {
public:
    explicit Taken(const MapView& view)
        : m_wide(static_cast<std::size_t>(view.width / covered) + 3),
          m_cells(m_wide * (static_cast<std::size_t>(view.height / covered) + 3), false)
    {
    }

    // False where a sign was drawn already.
    bool take(Point at)
    {
        const auto x = static_cast<std::size_t>(std::max(0.0, at.x / covered + 1));
        const auto y = static_cast<std::size_t>(std::max(0.0, at.y / covered + 1));
        const std::size_t cell = std::min(y * m_wide + std::min(x, m_wide - 1), m_cells.size() - 1);
        const bool isFree = !m_cells[cell];
        m_cells[cell] = true;
        return isFree;
    }

private:
    std::size_t m_wide;
    std::vector<bool> m_cells;
};

} // namespace

double signScale(const RegionScene& scene, const MapView& view)
{
    const MapExtent extent = scene.extent();
    if (extent.isEmpty || scene.traps.size() < 2) return 1;
    const double wide = std::max(extent.high.eastMetres - extent.low.eastMetres, 1.0) / view.metresPerPixel;
    const double high = std::max(extent.high.northMetres - extent.low.northMetres, 1.0) / view.metresPerPixel;
    const double apart = std::sqrt(wide * high / static_cast<double>(scene.traps.size()));
    constexpr double roomy = 42; // pixels from trap to trap: more than the largest sign
    return std::clamp(apart / roomy, 0.3, 1.0);
}

void drawTrapSign(TrapStanding standing, int level, Point at, double size, Picture& picture)
{
    if (standing == TrapStanding::Missing) {
        picture.primitives.emplace_back(Mark{at, MarkShape::Diamond, size, Ink::Full, true});
        return;
    }
    const Ink ink = level > 0 ? bandInk(level) : Ink::CatchBar;
    picture.primitives.emplace_back(Mark{at, MarkShape::Circle, size, Ink::Full, false});
    picture.primitives.emplace_back(Mark{at, MarkShape::Circle, size - 2.5, ink, false});
    if (standing == TrapStanding::AtLeast)
        picture.primitives.emplace_back(Mark{at, MarkShape::Circle, size * 0.62, Ink::Card, false});
    if (level > 0 && size >= leastForDots) drawDots(picture, at, level, dot);
}

void drawTrapSigns(const RegionScene& scene, const MapView& view, Picture& picture)
{
    const double scale = signScale(scene, view);
    double most = 1;
    for (const SceneTrap& trap : scene.traps) most = std::max(most, static_cast<double>(trap.soFar.value()));
    Taken taken(view);
    std::vector<const SceneTrap*> drawn;
    const double reach = least + growth;
    for (auto trap = scene.traps.rbegin(); trap != scene.traps.rend(); ++trap) {
        const Point at = view.at(trap->place);
        const bool isSeen =
            at.x > -reach && at.y > -reach && at.x < view.width + reach && at.y < view.height + reach;
        if (isSeen && taken.take(at)) drawn.push_back(&*trap);
    }
    // Areas, not widths, grow with the catch.
    for (auto trap = drawn.rbegin(); trap != drawn.rend(); ++trap) {
        const SceneTrap& one = **trap;
        const double part = std::sqrt(std::max(0.0, static_cast<double>(one.soFar.value())) / most);
        const double size =
            (one.standing == TrapStanding::Missing ? missingSize : least + growth * part) * scale;
        drawTrapSign(one.standing, one.level, view.at(one.place), size, picture);
    }
}

} // namespace duskrow::formats
