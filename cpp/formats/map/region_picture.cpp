// SPDX-License-Identifier: MIT
#include "formats/map/region_picture.h"

#include <algorithm>
#include <cmath>

#include "formats/bulletin/map_key.h"
#include "formats/map/graticule.h"
#include "formats/map/trap_signs.h"

namespace duskrow::formats {

using namespace domain;

namespace {

constexpr double hatchStep = 7; // pixels
constexpr double leastStep = 0.7; // pixels between the points of a path

bool isSeen(const MapExtent& extent, const MapView& view)
{
    if (extent.isEmpty) return false;
    const Point low = view.at(extent.low);
    const Point high = view.at(extent.high);
    return low.x <= view.width && high.x >= 0 && high.y <= view.height && low.y >= 0;
}

// Which cells of a grid are seen along one side.
struct Seen {
    std::size_t first = 0;
    std::size_t end = 0;
};

Seen seenOf(double from, double to, double start, double cell, std::size_t count)
{
    const auto clamped = [count](double at) {
        return static_cast<std::size_t>(std::clamp(at, 0.0, static_cast<double>(count)));
    };
    return {clamped(std::floor((from - start) / cell)), clamped(std::ceil((to - start) / cell))};
}

class Surface {
public:
    Surface(const SceneSurface& surface, const MapView& view, Picture& picture)
        : m_surface(surface), m_grid(surface.grid), m_view(view), m_picture(picture)
    {
        const PlaneOffset low = view.placeOf({0, view.height});
        const PlaneOffset high = view.placeOf({view.width, 0});
        const double cell = m_grid.cell.value();
        m_columns =
            seenOf(low.eastMetres, high.eastMetres, m_grid.southWest.eastMetres, cell, m_grid.columns);
        m_rows = seenOf(low.northMetres, high.northMetres, m_grid.southWest.northMetres, cell, m_grid.rows);
    }

    // Cells of one row that look alike are one bar, on whole pixels so that no seam shows.
    void tint()
    {
        for (std::size_t row = m_rows.first; row < m_rows.end; ++row)
            for (std::size_t from = m_columns.first; from < m_columns.end;) {
                std::size_t to = from + 1;
                while (to < m_columns.end && stepOf(to, row) == stepOf(from, row)) ++to;
                tintRun(from, to, row);
                from = to;
            }
    }

    // Upright strokes: thick where nothing is known, thin where little is. They hang on the plane, so that
    // they move with it.
    void hatch()
    {
        const double cell = m_grid.cell.value();
        const double origin = m_view.at({0, 0}).x;
        for (double x = origin - std::floor(origin / hatchStep) * hatchStep; x < m_view.width;
             x += hatchStep) {
            const double east = m_view.placeOf({x, 0}).eastMetres - m_grid.southWest.eastMetres;
            if (east < 0) continue;
            const auto column = static_cast<std::size_t>(east / cell);
            if (column >= m_grid.columns) break;
            for (std::size_t from = m_rows.first; from < m_rows.end;) {
                const CellCover cover = at(column, from).cover;
                std::size_t to = from + 1;
                while (to < m_rows.end && at(column, to).cover == cover) ++to;
                if (cover != CellCover::Shown) stroke(x, from, to, cover);
                from = to;
            }
        }
    }

private:
    [[nodiscard]] const SceneSurface::Cell& at(std::size_t column, std::size_t row) const
    {
        return m_surface.cells[row * m_grid.columns + column];
    }
    [[nodiscard]] int stepOf(std::size_t column, std::size_t row) const
    {
        const SceneSurface::Cell& cell = at(column, row);
        return cell.cover == CellCover::Masked ? 0 : cell.chance;
    }
    [[nodiscard]] Point cornerOf(std::size_t column, std::size_t row) const
    {
        const double cell = m_grid.cell.value();
        return m_view.at({m_grid.southWest.eastMetres + static_cast<double>(column) * cell,
            m_grid.southWest.northMetres + static_cast<double>(row) * cell});
    }

    void tintRun(std::size_t from, std::size_t to, std::size_t row)
    {
        const Point low = cornerOf(from, row);
        const Point high = cornerOf(to, row + 1);
        const Frame frame{std::round(low.x), std::round(high.y), std::round(high.x), std::round(low.y)};
        const int step = stepOf(from, row);
        m_picture.primitives.emplace_back(
            Bar{frame, step == 0 ? Ink::Line : tintOf(step), Fill::Solid, 0, step == 0 ? 0.6 : 1});
    }

    void stroke(double x, std::size_t from, std::size_t to, CellCover cover)
    {
        const double low = std::min(cornerOf(0, from).y, m_view.height);
        const double high = std::max(cornerOf(0, to).y, 0.0);
        m_picture.primitives.emplace_back(
            Line{{{x, high}, {x, low}}, Ink::Unknown, cover == CellCover::Masked ? 1.6 : 0.7, false});
    }

    const SceneSurface& m_surface;
    const SurfaceGrid& m_grid;
    const MapView& m_view;
    Picture& m_picture;
    Seen m_columns;
    Seen m_rows;
};

// Points that fall on one pixel are one.
void drawPath(const ScenePath& path, const MapView& view, Picture& picture)
{
    if (!isSeen(path.extent, view)) return;
    Line line{{}, Ink::Soft, 1.2, false};
    for (std::size_t i = 0; i < path.points.size(); ++i) {
        const Point point = view.at(path.points[i]);
        const bool isEnd = i + 1 == path.points.size();
        if (!line.points.empty() && !isEnd && std::abs(point.x - line.points.back().x) < leastStep
            && std::abs(point.y - line.points.back().y) < leastStep)
            continue;
        line.points.push_back(point);
    }
    picture.primitives.emplace_back(std::move(line));
}

void drawNorth(const RegionWords& words, const MapView& view, double textScale, Picture& picture)
{
    const double size = 15 * textScale;
    const double small = 13 * textScale;
    const double x = view.width - size * 1.2;
    const double high = size * 1.3;
    constexpr double top = 8;
    picture.primitives.emplace_back(
        Bar{{x - size * 0.8, 3, x + size * 0.8, top + high + small * 1.4}, Ink::Card, Fill::Solid, 4, 0.85});
    picture.primitives.emplace_back(
        Area{{{x, top}, {x + size * 0.35, top + high}, {x, top + high * 0.75}, {x - size * 0.35, top + high}},
            Ink::Full, Fill::Solid, 1});
    picture.primitives.emplace_back(
        Words{words.north, {x, top + high + small}, Anchor::Middle, small, 600, Ink::Full, 0});
}

} // namespace

Picture regionPicture(const RegionScene& scene, const MapGround& ground, const MapView& view,
    const RegionWords& words, double textScale)
{
    Picture picture{view.width, view.height, words.title, words.description, {}};
    if (view.width <= 0 || view.height <= 0) return picture;
    ground.draw(view, picture);
    if (scene.surface && !scene.surface->cells.empty()) {
        Surface surface(*scene.surface, view, picture);
        surface.tint();
        surface.hatch();
    }
    drawGraticule(scene.plane, view, textScale, picture);
    for (const ScenePath& path : scene.paths) drawPath(path, view, picture);
    drawTrapSigns(scene, view, picture);
    drawScaleBar(view, textScale, picture);
    drawNorth(words, view, textScale, picture);
    return picture;
}

std::optional<std::size_t> trapAt(const RegionScene& scene, const MapView& view, Point point)
{
    constexpr double finger = 24; // pixels
    std::optional<std::size_t> found;
    double least = finger * finger;
    for (const SceneTrap& trap : scene.traps) {
        const Point at = view.at(trap.place);
        const double distance = (at.x - point.x) * (at.x - point.x) + (at.y - point.y) * (at.y - point.y);
        if (distance > least) continue;
        least = distance;
        found = trap.trap;
    }
    return found;
}

} // namespace duskrow::formats
