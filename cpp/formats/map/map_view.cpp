// SPDX-License-Identifier: MIT
#include "formats/map/map_view.h"

#include <algorithm>

namespace duskrow::formats {

using domain::PlaneOffset;

namespace {

constexpr double nearest = 1; // metres a pixel
constexpr double farthest = 20'000;
constexpr double leastSpan = 5'000; // metres
constexpr double room = 1.16; // of what is shown

} // namespace

void MapExtent::take(PlaneOffset place)
{
    if (isEmpty) low = high = place;
    isEmpty = false;
    low = {std::min(low.eastMetres, place.eastMetres), std::min(low.northMetres, place.northMetres)};
    high = {std::max(high.eastMetres, place.eastMetres), std::max(high.northMetres, place.northMetres)};
}

Point MapView::at(PlaneOffset place) const
{
    return {width / 2 + (place.eastMetres - middle.eastMetres) / metresPerPixel,
        height / 2 - (place.northMetres - middle.northMetres) / metresPerPixel};
}

PlaneOffset MapView::placeOf(Point point) const
{
    return {middle.eastMetres + (point.x - width / 2) * metresPerPixel,
        middle.northMetres - (point.y - height / 2) * metresPerPixel};
}

MapView MapView::moved(double right, double down) const
{
    MapView view = *this;
    view.middle.eastMetres -= right * metresPerPixel;
    view.middle.northMetres += down * metresPerPixel;
    return view;
}

MapView MapView::zoomed(double factor, Point around) const
{
    const PlaneOffset stays = placeOf(around);
    MapView view = *this;
    view.metresPerPixel = std::clamp(metresPerPixel / factor, nearest, farthest);
    const Point now = view.at(stays);
    return view.moved(around.x - now.x, around.y - now.y);
}

MapView MapView::sized(double wide, double high) const
{
    MapView view = *this;
    view.width = wide;
    view.height = high;
    return view;
}

MapView viewOf(const MapExtent& extent, double width, double height)
{
    MapView view{{}, 100, width, height};
    view.middle = {(extent.low.eastMetres + extent.high.eastMetres) / 2,
        (extent.low.northMetres + extent.high.northMetres) / 2};
    const double wide = std::max(extent.high.eastMetres - extent.low.eastMetres, leastSpan) * room;
    const double high = std::max(extent.high.northMetres - extent.low.northMetres, leastSpan) * room;
    view.metresPerPixel =
        std::clamp(std::max(wide / std::max(width, 1.0), high / std::max(height, 1.0)), nearest, farthest);
    return view;
}

} // namespace duskrow::formats
