// SPDX-License-Identifier: MIT
#include "domain/rules/regional_plane.h"

#include <GeographicLib/AzimuthalEquidistant.hpp>

namespace duskrow::domain {

namespace {

const GeographicLib::AzimuthalEquidistant& projection()
{
    static const GeographicLib::AzimuthalEquidistant made(GeographicLib::Geodesic::WGS84());
    return made;
}

} // namespace

PlaneOffset RegionalPlane::offsetOf(GeoPoint place) const
{
    PlaneOffset offset;
    projection().Forward(m_middle.latitude(), m_middle.longitude(), place.latitude(), place.longitude(),
        offset.eastMetres, offset.northMetres);
    return offset;
}

GeoPoint RegionalPlane::placeAt(PlaneOffset offset) const
{
    double latitude = 0;
    double longitude = 0;
    projection().Reverse(m_middle.latitude(), m_middle.longitude(), offset.eastMetres, offset.northMetres,
        latitude, longitude);
    return toGeoPoint(latitude, longitude);
}

} // namespace duskrow::domain
