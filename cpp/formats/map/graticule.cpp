// SPDX-License-Identifier: MIT
#include "formats/map/graticule.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "formats/degrees.h"
#include "formats/frame_map.h"

namespace duskrow::formats {

using namespace domain;

namespace {

constexpr int pieces = 12; // of which a curve is made
constexpr double metresPerDegree = 111'200;
constexpr double apart = 110; // pixels between lines, at least

double stepFor(double metresPerPixel, double squeeze, double textScale)
{
    const double least = apart * textScale * metresPerPixel / (metresPerDegree * squeeze);
    for (const double step :
        {0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0})
        if (step >= least) return step;
    return 45;
}

int decimalsOf(double step)
{
    int decimals = 0;
    for (double scaled = step; decimals < 3 && scaled < 0.999; ++decimals) scaled *= 10;
    return decimals;
}

struct Corners {
    double south = 90;
    double north = -90;
    double west = 0; // from the meridian of the middle
    double east = 0;
};

Corners cornersOf(const RegionalPlane& plane, const MapView& view)
{
    Corners corners;
    for (int i = 0; i <= 2; ++i)
        for (int k = 0; k <= 2; ++k) {
            const GeoPoint place = plane.placeAt(view.placeOf({view.width * i / 2, view.height * k / 2}));
            corners.south = std::min(corners.south, place.latitude());
            corners.north = std::max(corners.north, place.latitude());
            const double east = longitudeDifference(plane.middle().longitude(), place.longitude());
            corners.west = std::min(corners.west, east);
            corners.east = std::max(corners.east, east);
        }
    return corners;
}

// One curve and its label where it comes into the picture.
class Curve {
public:
    Curve(const RegionalPlane& plane, const MapView& view, double small, Picture& picture)
        : m_plane(plane), m_view(view), m_small(small), m_picture(picture)
    {
    }

    void parallel(double latitude, double west, double east, const std::string& label)
    {
        Line line{{}, Ink::Unknown, 0.5, false};
        for (int i = 0; i <= pieces; ++i) {
            const double longitude = m_plane.middle().longitude() + west + (east - west) * i / pieces;
            line.points.push_back(m_view.at(m_plane.offsetOf(toGeoPoint(latitude, longitude))));
        }
        const double y = crossing(line.points, 2, true);
        m_picture.primitives.emplace_back(std::move(line));
        if (y > m_small * 2.5 && y < m_view.height - m_small * 3) say(label, {4, y - 4});
    }

    void meridian(double longitude, double south, double north, const std::string& label)
    {
        Line line{{}, Ink::Unknown, 0.5, false};
        for (int i = 0; i <= pieces; ++i)
            line.points.push_back(m_view.at(m_plane.offsetOf(
                toGeoPoint(std::clamp(south + (north - south) * i / pieces, -89.9, 89.9), longitude))));
        const double x = crossing(line.points, 2, false);
        m_picture.primitives.emplace_back(std::move(line));
        if (x > m_small && x < m_view.width - m_small * 7) say(label, {x + 4, m_small + 3});
    }

private:
    // Where a curve crosses a line along the left or the upper edge; outside where it does not.
    static double crossing(const std::vector<Point>& points, double edge, bool alongLeft)
    {
        for (std::size_t i = 0; i + 1 < points.size(); ++i) {
            const double from = alongLeft ? points[i].x : points[i].y;
            const double to = alongLeft ? points[i + 1].x : points[i + 1].y;
            if ((from - edge) * (to - edge) > 0 || from == to) continue;
            const double part = (edge - from) / (to - from);
            return alongLeft ? points[i].y + part * (points[i + 1].y - points[i].y)
                             : points[i].x + part * (points[i + 1].x - points[i].x);
        }
        return -1;
    }

    void say(const std::string& label, Point at)
    {
        m_picture.primitives.emplace_back(Words{label, at, Anchor::Start, m_small, 400, Ink::Soft, 0});
    }

    const RegionalPlane& m_plane;
    const MapView& m_view;
    double m_small;
    Picture& m_picture;
};

} // namespace

void drawGraticule(const RegionalPlane& plane, const MapView& view, double textScale, Picture& picture)
{
    const Corners seen = cornersOf(plane, view);
    const double middle = (seen.north + seen.south) / 2;
    const double squeeze = std::max(0.05, std::cos(middle * std::numbers::pi / 180));
    Curve curve(plane, view, 13 * textScale, picture);
    const double up = stepFor(view.metresPerPixel, 1, textScale);
    const auto lastUp = static_cast<long>(std::floor(std::min(seen.north, 89.0) / up));
    for (auto i = static_cast<long>(std::ceil(std::max(seen.south, -89.0) / up)); i <= lastUp; ++i) {
        const double at = static_cast<double>(i) * up;
        curve.parallel(at, seen.west, seen.east, degreesLabel(at, decimalsOf(up)));
    }
    const double along = stepFor(view.metresPerPixel, squeeze, textScale);
    const double origin = plane.middle().longitude();
    const auto lastAlong = static_cast<long>(std::floor((origin + seen.east) / along));
    for (auto i = static_cast<long>(std::ceil((origin + seen.west) / along)); i <= lastAlong; ++i) {
        const double at = static_cast<double>(i) * along;
        const double shown = longitudeDifference(0, at);
        curve.meridian(at, seen.south, seen.north, degreesLabel(shown, decimalsOf(along)));
    }
}

void drawScaleBar(const MapView& view, double textScale, Picture& picture)
{
    constexpr double kilometre = 1000;
    const double small = 13 * textScale;
    const double most = std::min(140 * textScale, view.width / 3);
    const double length = roundLength(Metres{most * view.metresPerPixel});
    const double pixels = length / view.metresPerPixel;
    const std::string label = length < kilometre ? std::to_string(std::llround(length)) + " m"
                                                 : std::to_string(std::llround(length / kilometre)) + " km";
    const double y = view.height - 12;
    const double words = static_cast<double>(label.size()) * small * 0.6;
    picture.primitives.emplace_back(
        Bar{{6, y - small * 1.3, 12 + pixels + words + small, y + 8}, Ink::Card, Fill::Solid, 4, 0.85});
    picture.primitives.emplace_back(
        Line{{{10, y - 6}, {10, y}, {10 + pixels, y}, {10 + pixels, y - 6}}, Ink::Full, 2, false});
    picture.primitives.emplace_back(
        Words{label, {14 + pixels + small * 0.2, y}, Anchor::Start, small, 500, Ink::Full, 0});
}

} // namespace duskrow::formats
