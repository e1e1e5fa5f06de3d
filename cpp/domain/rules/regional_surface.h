// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "domain/rules/kriging.h"

// What the season's catch would be between the traps, drawn only where that can be known.
namespace duskrow::domain {

// Cells of one size, row by row from the south-west corner.
struct SurfaceGrid {
    PlaneOffset southWest; // the corner of the first cell
    Metres cell{0};
    std::size_t columns = 0;
    std::size_t rows = 0;

    [[nodiscard]] PlaneOffset middleOf(std::size_t column, std::size_t row) const;
};

struct SurfaceTrap {
    PlaneOffset place;
    Moths total; // of its season
};

enum class SurfaceStanding {
    TooFewTraps, // below 20: dots only
    AllEqual, // nothing to tell places apart by
    NoPattern, // what the neighbours say of a trap is hardly better than the mean of all
    Drawn,
};

enum class CellCover {
    Shown,
    Hatched, // little is known
    Masked, // nothing is known
};

struct SurfaceCell {
    CellCover cover = CellCover::Masked;
    double medianTotal = 0; // of a further trap there, in moths; half of them would catch more
    std::vector<double> chances; // of catching more than each edge, 0 to 1
};

struct RegionalSurface {
    SurfaceStanding standing = SurfaceStanding::TooFewTraps;
    std::size_t traps = 0;
    std::optional<Covariance> covariance; // of the logarithms of catch + 1
    double errorByNeighbours = 0; // root mean square, each trap by the others, on the logarithmic scale
    double errorByMean = 0; // the same by the mean of all others
    std::vector<SurfaceCell> cells; // in the order of the grid; none unless drawn
};

// Traps at one place are taken together, as the mean of their logarithms. Of more than 1,000 places every
// so-manyth is used.
//
// traps  with whole seasons, or all with seasons up to the same day
// edges  catches, each 0 or more
// Source  computed comparison of methods on simulated regions: below 20 traps nothing, a surface only where
//         it is 5 % better than the mean, masked beyond 0.8 of the sill, hatched from 0.5
RegionalSurface regionalSurface(
    std::span<const SurfaceTrap> traps, const SurfaceGrid& grid, std::span<const Moths> edges);

// The chance that a further trap catches more than `edge`.
double chanceAbove(const Kriged& kriged, Moths edge);

} // namespace duskrow::domain
