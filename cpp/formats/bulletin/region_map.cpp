// SPDX-License-Identifier: MIT
#include "formats/bulletin/region_map.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <numbers>

#include "domain/rules/local_plane.h"
#include "formats/bulletin/map_key.h"
#include "formats/degrees.h"
#include "formats/frame_map.h"

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

constexpr double margin = 0.04; // of the extent, on each side
constexpr double leastSpan = 0.2; // degrees of latitude: two cells
constexpr double mostHeight = 1.35; // of the width

// Degrees to pixels: east and west shrink with the cosine of the middle's latitude.
struct Projection {
    double west = 0;
    double north = 0;
    double perLatitude = 1; // pixels a degree
    double perLongitude = 1;

    [[nodiscard]] Point at(double longitude, double latitude) const
    {
        return {(longitude - west) * perLongitude, (north - latitude) * perLatitude};
    }
    [[nodiscard]] Point at(LonLat place) const { return at(place.longitude, place.latitude); }
    [[nodiscard]] Point at(GeoPoint place) const { return at(place.longitude(), place.latitude()); }
};

struct Extent {
    double west = 180;
    double east = -180;
    double south = 90;
    double north = -90;

    [[nodiscard]] bool isEmpty() const { return west > east; }
    void take(LonLat place)
    {
        west = std::min(west, place.longitude);
        east = std::max(east, place.longitude);
        south = std::min(south, place.latitude);
        north = std::max(north, place.latitude);
    }
    void take(GeoPoint place) { take(LonLat{place.longitude(), place.latitude()}); }
};

Extent extentOf(const RegionMapInput& input)
{
    Extent extent;
    for (const MapDistrict& district : input.districts)
        for (const Polygon& polygon : district.polygons)
            for (const LonLat place : polygon.front()) extent.take(place);
    for (const MapCell& cell : input.cells) {
        extent.take(southWestOf(cell.cell));
        extent.take(northEastOf(cell.cell));
    }
    for (const MapTrap& trap : input.traps) extent.take(trap.place);
    return extent;
}

// The middle of the largest ring's corners, weighted by area; the mean of its corners for a flat one.
Point middleOf(const std::vector<Point>& ring)
{
    double area = 0;
    Point sum;
    Point mean;
    for (std::size_t i = 0; i + 1 < ring.size(); ++i) {
        const double cross = ring[i].x * ring[i + 1].y - ring[i + 1].x * ring[i].y;
        area += cross;
        sum.x += (ring[i].x + ring[i + 1].x) * cross;
        sum.y += (ring[i].y + ring[i + 1].y) * cross;
        mean.x += ring[i].x / static_cast<double>(ring.size() - 1);
        mean.y += ring[i].y / static_cast<double>(ring.size() - 1);
    }
    if (std::abs(area) < 1e-6) return mean;
    return {sum.x / (3 * area), sum.y / (3 * area)};
}

double areaOf(const std::vector<Point>& ring)
{
    double area = 0;
    for (std::size_t i = 0; i + 1 < ring.size(); ++i)
        area += ring[i].x * ring[i + 1].y - ring[i + 1].x * ring[i].y;
    return std::abs(area) / 2;
}

class Drawing {
public:
    explicit Drawing(const RegionMapInput& input)
        : m_input(input), m_size(15 * input.textScale), m_small(12.5 * input.textScale)
    {
        m_picture = {input.width, 0, input.title, input.description, {}};
    }

    Picture drawn()
    {
        const Extent extent = extentOf(m_input);
        if (extent.isEmpty()) return nothing();
        layOut(extent);
        add(Bar{m_ground, Ink::Card, Fill::Solid, 0, 1});
        drawDistricts();
        drawGraticule(extent);
        drawLines();
        drawCells();
        drawBoundaries();
        drawTraps();
        drawNames();
        drawNorth();
        drawBorder();
        const double foot = drawMapKey(
            m_picture, m_input, {0, m_ground.bottom, m_input.width, 0}, m_size, m_small, m_pixelsPerMetre);
        m_picture.height = std::ceil(foot);
        return std::move(m_picture);
    }

private:
    template <typename P>
    void add(P one)
    {
        m_picture.primitives.emplace_back(std::move(one));
    }

    Picture nothing()
    {
        m_picture.height = m_size * 6;
        double y = m_size * 2;
        for (const std::string& line : brokenIntoLines(m_input.empty, m_size, m_input.width - 2 * m_size)) {
            add(Words{line, {m_input.width / 2, y}, Anchor::Middle, m_size, 400, Ink::Soft, 0});
            y += m_size * 1.3;
        }
        m_picture.height = std::max(m_picture.height, y + m_size);
        return std::move(m_picture);
    }

    void layOut(const Extent& extent)
    {
        const double middle = (extent.north + extent.south) / 2;
        const double squeeze = std::max(0.05, std::cos(middle * std::numbers::pi / 180));
        const double high = std::max(extent.north - extent.south, leastSpan) * (1 + 2 * margin);
        const double wide = std::max(extent.east - extent.west, leastSpan / squeeze) * (1 + 2 * margin);
        m_projection.perLatitude =
            std::min(m_input.width / (wide * squeeze), m_input.width * mostHeight / high);
        m_projection.perLongitude = m_projection.perLatitude * squeeze;
        m_projection.north = middle + high / 2;
        m_projection.west = (extent.east + extent.west) / 2 - m_input.width / m_projection.perLongitude / 2;
        m_ground = {0, 0, m_input.width, high * m_projection.perLatitude};
        m_pixelsPerMetre =
            m_projection.perLatitude * 180 / std::numbers::pi / earthRadii(middle).northward.value();
    }

    [[nodiscard]] std::vector<Point> projected(const std::vector<LonLat>& places) const
    {
        std::vector<Point> points;
        points.reserve(places.size());
        for (const LonLat place : places) points.push_back(m_projection.at(place));
        return points;
    }

    void drawDistricts()
    {
        for (const MapDistrict& district : m_input.districts)
            for (const Polygon& polygon : district.polygons) {
                if (district.level)
                    add(Area{projected(polygon.front()), tintOf(*district.level), Fill::Solid, 1});
                else
                    add(Area{projected(polygon.front()), Ink::Line, Fill::Hatched, 1});
                for (std::size_t hole = 1; hole < polygon.size(); ++hole)
                    add(Area{projected(polygon[hole]), Ink::Card, Fill::Solid, 1});
            }
    }

    // Lines at round degrees, three to eight of each, with their degrees along the left and upper edge.
    void drawGraticule(const Extent& extent)
    {
        const double span = std::max({extent.north - extent.south, leastSpan});
        double step = 5;
        for (const double smaller : {2.0, 1.0, 0.5, 0.2, 0.1})
            if (span / step < 3) step = smaller;
        const int decimals = step < 1 ? 1 : 0;
        const double south = m_projection.north - m_ground.height() / m_projection.perLatitude;
        const double east = m_projection.west + m_ground.width() / m_projection.perLongitude;
        for (double at = std::ceil(south / step) * step; at < m_projection.north; at += step) {
            const double y = m_projection.at(0, at).y;
            add(Line{{{0, y}, {m_ground.right, y}}, Ink::Unknown, 0.4, false});
            if (y > m_size * 2.6 && y < m_ground.bottom - m_small)
                add(Words{degreesLabel(at, decimals), {3, y - 3}, Anchor::Start, m_small * 0.85, 400,
                    Ink::Soft, 0});
        }
        for (double at = std::ceil(m_projection.west / step) * step; at < east; at += step) {
            const double x = m_projection.at(at, 0).x;
            add(Line{{{x, 0}, {x, m_ground.bottom}}, Ink::Unknown, 0.4, false});
            if (x > m_size && x < m_ground.right - m_size * 4)
                add(Words{degreesLabel(at, decimals), {x + 3, m_small}, Anchor::Start, m_small * 0.85, 400,
                    Ink::Soft, 0});
        }
    }

    void drawLines()
    {
        for (const auto& line : m_input.lines) add(Line{projected(line), Ink::Unknown, 1.2, false});
    }

    void drawBoundaries()
    {
        for (const MapDistrict& district : m_input.districts)
            for (const Polygon& polygon : district.polygons)
                for (const Ring& ring : polygon) add(Line{projected(ring), Ink::Full, 1.2, false});
    }

    void drawCells()
    {
        for (const MapCell& cell : m_input.cells) {
            const Point low = m_projection.at(southWestOf(cell.cell));
            const Point high = m_projection.at(northEastOf(cell.cell));
            const Frame frame{low.x, high.y, high.x, low.y};
            add(Bar{frame, cell.level ? bandInk(*cell.level) : Ink::Line,
                cell.level ? Fill::Solid : Fill::Hatched, 0, 1});
            add(Line{{{low.x, high.y}, {high.x, high.y}, {high.x, low.y}, {low.x, low.y}, {low.x, high.y}},
                Ink::Full, 0.8, false});
            const double room = std::min(frame.width(), frame.height());
            if (cell.level)
                drawDots(m_picture, {(low.x + high.x) / 2, (low.y + high.y) / 2}, *cell.level,
                    std::min(room / 6, m_small * 0.45));
        }
    }

    // Names and dots stand in the middle of the largest ring.
    void drawNames()
    {
        for (const MapDistrict& district : m_input.districts) {
            std::vector<Point> largest;
            for (const Polygon& polygon : district.polygons) {
                auto points = projected(polygon.front());
                if (largest.empty() || areaOf(points) > areaOf(largest)) largest = std::move(points);
            }
            if (largest.empty()) continue;
            const Point middle = middleOf(largest);
            const auto lines = brokenIntoLines(district.name, m_small, m_size * 8);
            double y = middle.y;
            for (std::size_t i = 0; i < lines.size() && i < 3; ++i) {
                const Words words{lines[i], {middle.x, y}, Anchor::Middle, m_small, 600, Ink::Full, 0};
                Frame behind = frameOf(words);
                behind.left -= 2;
                behind.right += 2;
                add(Bar{behind, Ink::Card, Fill::Solid, 3, 0.8});
                add(words);
                y += m_small * 1.15;
            }
            if (district.level) drawDots(m_picture, {middle.x, y}, *district.level, m_small * 0.45);
        }
    }

    void drawTraps()
    {
        double most = 1;
        for (const MapTrap& trap : m_input.traps)
            most = std::max(most, static_cast<double>(trap.soFar.value()));
        for (const MapTrap& trap : m_input.traps) {
            const Point at = m_projection.at(trap.place);
            // Areas, not widths, grow with the catch.
            const double size =
                7 + 13 * std::sqrt(std::max(0.0, static_cast<double>(trap.soFar.value())) / most);
            if (trap.standing == TrapStanding::Missing) {
                add(Mark{at, MarkShape::Diamond, 9, Ink::Unknown, true});
                continue;
            }
            const Ink ink = trap.level ? bandInk(*trap.level) : Ink::CatchBar;
            if (trap.standing == TrapStanding::Counted)
                add(Mark{at, MarkShape::Circle, size + 2, Ink::Full, false});
            add(Mark{at, MarkShape::Circle, size, ink, trap.standing == TrapStanding::AtLeast});
            if (trap.level)
                drawDots(m_picture, {at.x, at.y + size / 2 + m_small * 0.5}, *trap.level, m_small * 0.28);
        }
    }

    void drawNorth()
    {
        const double x = m_ground.right - m_size * 1.2;
        const double half = m_size * 0.35;
        const double high = m_size * 1.3;
        constexpr double top = 6;
        add(Bar{{x - m_size * 0.8, 2, x + m_size * 0.8, top + high + m_small * 1.4}, Ink::Card, Fill::Solid,
            4, 0.85});
        add(Area{{{x, top}, {x + half, top + high}, {x, top + high * 0.75}, {x - half, top + high}},
            Ink::Full, Fill::Solid, 1});
        add(Words{m_input.north, {x, top + high + m_small}, Anchor::Middle, m_small, 600, Ink::Full, 0});
    }

    void drawBorder()
    {
        constexpr double inset = 0.5;
        add(Line{{{inset, inset}, {m_ground.right - inset, inset}, {m_ground.right - inset, m_ground.bottom},
                     {inset, m_ground.bottom}, {inset, inset}},
            Ink::Unknown, 1, false});
    }

    const RegionMapInput& m_input;
    double m_size;
    double m_small;
    Projection m_projection;
    Frame m_ground;
    double m_pixelsPerMetre = 1;
    Picture m_picture;
};

} // namespace

Picture regionMap(const RegionMapInput& input)
{
    constexpr double least = 160;
    if (input.width < least) return {input.width, 0, input.title, input.description, {}};
    return Drawing(input).drawn();
}

} // namespace duskrow::formats
