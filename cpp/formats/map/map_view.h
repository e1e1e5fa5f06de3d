// SPDX-License-Identifier: MIT
#pragma once

#include "domain/rules/local_plane.h"
#include "formats/picture.h"

namespace duskrow::formats {

// What a map has to show, in metres of its plane.
struct MapExtent {
    domain::PlaneOffset low;
    domain::PlaneOffset high;
    bool isEmpty = true;

    void take(domain::PlaneOffset place);
};

// The part of a plane that a map shows, north up.
struct MapView {
    domain::PlaneOffset middle;
    double metresPerPixel = 100;
    double width = 0; // pixels
    double height = 0;

    [[nodiscard]] Point at(domain::PlaneOffset place) const;
    [[nodiscard]] domain::PlaneOffset placeOf(Point point) const;
    // What was seen moves by so many pixels.
    [[nodiscard]] MapView moved(double right, double down) const;
    // Nearer by a factor above 1; what is seen at a point stays there. From 1 m to 20 km a pixel.
    [[nodiscard]] MapView zoomed(double factor, Point around) const;
    // The same place and scale in another size.
    [[nodiscard]] MapView sized(double wide, double high) const;
};

// All of an extent with room around it; of nothing, or of a single place, some kilometres around it.
MapView viewOf(const MapExtent& extent, double width, double height);

} // namespace duskrow::formats
