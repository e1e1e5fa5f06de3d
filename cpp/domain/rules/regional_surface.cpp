// SPDX-License-Identifier: MIT
#include "domain/rules/regional_surface.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace duskrow::domain {

namespace {

constexpr std::size_t leastTraps = 20;
constexpr double leastGain = 0.05; // of the error by the mean
constexpr double hatchedFrom = 0.5; // of the sill
constexpr double maskedFrom = 0.8;
constexpr double farthest = 50'000; // m to the nearest trap
constexpr std::size_t mostSolved = 3'000; // places at which the variance is worked out
constexpr std::size_t mostKriged = 1'000; // values: the work grows with the cube of their number

std::vector<PlacedValue> logarithmsOf(std::span<const SurfaceTrap> traps)
{
    struct Place {
        PlaneOffset at;
        double sum = 0;
        int count = 0;
    };
    std::vector<Place> places;
    for (const SurfaceTrap& trap : traps) {
        const auto known = std::find_if(places.begin(), places.end(), [&](const Place& place) {
            return place.at.eastMetres == trap.place.eastMetres
                && place.at.northMetres == trap.place.northMetres;
        });
        Place& place = known == places.end() ? places.emplace_back(Place{trap.place}) : *known;
        place.sum += std::log1p(static_cast<double>(trap.total.value()));
        ++place.count;
    }
    std::vector<PlacedValue> values;
    const std::size_t step = (places.size() + mostKriged - 1) / mostKriged;
    for (std::size_t i = 0; i < places.size(); i += step)
        values.push_back({places[i].at, places[i].sum / places[i].count});
    return values;
}

// How far each is from the mean of all others, root mean square.
double errorByMean(std::span<const PlacedValue> values)
{
    const auto count = static_cast<double>(values.size());
    double sum = 0;
    for (const PlacedValue& value : values) sum += value.value;
    double squares = 0;
    for (const PlacedValue& value : values) {
        const double residual = value.value - (sum - value.value) / (count - 1);
        squares += residual * residual;
    }
    return std::sqrt(squares / count);
}

// Of a coarser grid within the cells: the variances change slowly, and cost most.
class Variances {
public:
    Variances(const Kriging& kriging, const SurfaceGrid& grid)
    {
        while (pointsAlong(grid.columns) * pointsAlong(grid.rows) > mostSolved) ++m_step;
        m_columns = pointsAlong(grid.columns);
        std::vector<PlaneOffset> places;
        for (std::size_t row = 0; row < pointsAlong(grid.rows); ++row)
            for (std::size_t column = 0; column < m_columns; ++column)
                places.push_back(grid.middleOf(column * m_step, row * m_step));
        for (const Kriged& kriged : kriging.at(places)) m_fields.push_back(kriged.varianceOfField);
    }

    [[nodiscard]] double at(std::size_t column, std::size_t row) const
    {
        const std::size_t left = column / m_step;
        const std::size_t below = row / m_step;
        const auto part = [&](std::size_t at) {
            return static_cast<double>(at % m_step) / static_cast<double>(m_step);
        };
        const auto held = [&](std::size_t x, std::size_t y) { return m_fields[y * m_columns + x]; };
        if (m_step == 1) return held(column, row);
        const double x = part(column);
        const double y = part(row);
        return (1 - y) * ((1 - x) * held(left, below) + x * held(left + 1, below))
            + y * ((1 - x) * held(left, below + 1) + x * held(left + 1, below + 1));
    }

private:
    // One more than the cells need, so that every cell lies between points.
    [[nodiscard]] std::size_t pointsAlong(std::size_t cells) const
    {
        return m_step == 1 ? cells : (cells + m_step - 1) / m_step + 1;
    }

    std::size_t m_step = 1;
    std::size_t m_columns = 0;
    std::vector<double> m_fields;
};

double nearest(std::span<const PlacedValue> values, PlaneOffset place)
{
    double least = std::numeric_limits<double>::max();
    for (const PlacedValue& value : values) {
        const double east = value.place.eastMetres - place.eastMetres;
        const double north = value.place.northMetres - place.northMetres;
        least = std::min(least, east * east + north * north);
    }
    return std::sqrt(least);
}

CellCover coverOf(double varianceOfSill, double toNearest, Metres range)
{
    if (varianceOfSill > maskedFrom || toNearest > std::min(range.value(), farthest))
        return CellCover::Masked;
    return varianceOfSill > hatchedFrom ? CellCover::Hatched : CellCover::Shown;
}

} // namespace

PlaneOffset SurfaceGrid::middleOf(std::size_t column, std::size_t row) const
{
    return {southWest.eastMetres + (static_cast<double>(column) + 0.5) * cell.value(),
        southWest.northMetres + (static_cast<double>(row) + 0.5) * cell.value()};
}

double chanceAbove(const Kriged& kriged, Moths edge)
{
    const double above = std::log1p(static_cast<double>(edge.value())) - kriged.value;
    return 0.5 * std::erfc(above / std::sqrt(2 * kriged.varianceOfOne));
}

RegionalSurface regionalSurface(
    std::span<const SurfaceTrap> traps, const SurfaceGrid& grid, std::span<const Moths> edges)
{
    RegionalSurface surface;
    surface.traps = traps.size();
    const std::vector<PlacedValue> values = logarithmsOf(traps);
    if (values.size() < leastTraps) return surface;
    surface.standing = SurfaceStanding::AllEqual;
    surface.errorByMean = errorByMean(values);
    surface.covariance = fitCovariance(values);
    if (!surface.covariance) return surface;
    const auto kriging = Kriging::from(values, *surface.covariance);
    if (!kriging) return surface;
    surface.errorByNeighbours = kriging->leaveOneOut().rootMeanSquare;
    surface.standing = SurfaceStanding::NoPattern;
    if (surface.errorByNeighbours > (1 - leastGain) * surface.errorByMean) return surface;

    surface.standing = SurfaceStanding::Drawn;
    const Variances variances(*kriging, grid);
    std::vector<PlaneOffset> places;
    places.reserve(grid.columns * grid.rows);
    for (std::size_t row = 0; row < grid.rows; ++row)
        for (std::size_t column = 0; column < grid.columns; ++column)
            places.push_back(grid.middleOf(column, row));
    const std::vector<double> expected = kriging->valuesAt(places);
    surface.cells.resize(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        const double field = variances.at(i % grid.columns, i / grid.columns);
        const Kriged kriged{expected[i], field + surface.covariance->nugget, field};
        SurfaceCell& cell = surface.cells[i];
        cell.cover =
            coverOf(field / surface.covariance->sill, nearest(values, places[i]), surface.covariance->range);
        cell.medianTotal = std::expm1(expected[i]);
        for (const Moths edge : edges) cell.chances.push_back(chanceAbove(kriged, edge));
    }
    return surface;
}

} // namespace duskrow::domain
