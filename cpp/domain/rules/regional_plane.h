// SPDX-License-Identifier: MIT
#pragma once

#include "domain/rules/local_plane.h"

namespace duskrow::domain {

// The plane of a region: distances and directions from its middle are true, and others within 400 km of it to
// one part in a thousand.
class RegionalPlane {
public:
    explicit RegionalPlane(GeoPoint middle) : m_middle(middle) { }

    [[nodiscard]] PlaneOffset offsetOf(GeoPoint place) const;
    [[nodiscard]] GeoPoint placeAt(PlaneOffset offset) const;
    [[nodiscard]] GeoPoint middle() const { return m_middle; }

private:
    GeoPoint m_middle;
};

} // namespace duskrow::domain
