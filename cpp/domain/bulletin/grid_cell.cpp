// SPDX-License-Identifier: MIT
#include "domain/bulletin/grid_cell.h"

#include <algorithm>
#include <cmath>

#include "domain/rules/geodesy.h"

namespace duskrow::domain {

namespace {

constexpr std::int32_t tenthE7 = 1'000'000;
constexpr std::int32_t northmostRow = 899;
constexpr std::int32_t eastmostColumn = 1799;

std::int32_t floorTenth(std::int32_t valueE7)
{
    const std::int32_t towardsZero = valueE7 / tenthE7;
    return valueE7 % tenthE7 < 0 ? towardsZero - 1 : towardsZero;
}

} // namespace

GridCell cellOf(GeoPoint place)
{
    const std::int32_t column = floorTenth(place.lonE7);
    return {std::min(floorTenth(place.latE7), northmostRow),
        column > eastmostColumn ? -eastmostColumn - 1 : column};
}

GeoPoint southWestOf(GridCell cell)
{
    return {cell.row * tenthE7, cell.column * tenthE7};
}

GeoPoint northEastOf(GridCell cell)
{
    return {(cell.row + 1) * tenthE7, (cell.column + 1) * tenthE7};
}

GeoPoint centreOf(GridCell cell)
{
    return {cell.row * tenthE7 + tenthE7 / 2, cell.column * tenthE7 + tenthE7 / 2};
}

Metres halfDiagonalOf(GridCell cell)
{
    const GeoPoint centre = centreOf(cell);
    const GeoPoint south = southWestOf(cell);
    const GeoPoint north = northEastOf(cell);
    return std::max(courseBetween(centre, south).distance, courseBetween(centre, north).distance);
}

Metres uncertaintyOf(GridCell cell, Metres worstFix)
{
    constexpr double step = 100;
    return Metres{std::ceil((halfDiagonalOf(cell) + worstFix).value() / step) * step};
}

} // namespace duskrow::domain
