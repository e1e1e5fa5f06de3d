// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "domain/base/uuid.h"
#include "domain/bulletin/grid_cell.h"

namespace duskrow::domain {

// What may be published of places, so that no field can be told from it.
//
// Source  fewest farms: statistical offices use 3 or 5 (OECD and UNECE glossary of statistical disclosure
//         control); half at most: a dominance rule, from memory
inline constexpr std::size_t fewestFarms = 5;

// A trap that reports, as the rule sees it.
struct Reporter {
    Uuid farm; // whose field it is; all traps without a keeper are taken for one farm's
    std::optional<std::size_t> district; // by its number; nothing where the site names none
    std::optional<GridCell> cell; // nothing where nobody knows the place

    bool operator==(const Reporter&) const = default;
};

// How many traps each farm has in a group.
class FarmTally {
public:
    void add(const Uuid& farm) { ++m_traps[farm]; }

    [[nodiscard]] std::size_t farms() const { return m_traps.size(); }
    [[nodiscard]] bool isEmpty() const { return m_traps.empty(); }
    // Five farms or more, and none of them with more than half of the traps.
    [[nodiscard]] bool mayShow() const;
    [[nodiscard]] bool isEmptyOrMayShow() const { return isEmpty() || mayShow(); }

private:
    std::map<Uuid, std::size_t> m_traps;
};

// The areas that get figures. Empty throughout when not even the whole may be shown.
struct PublishedAreas {
    bool whole = false;
    std::vector<std::size_t> districts; // ascending
    std::vector<GridCell> cells; // ascending

    bool operator==(const PublishedAreas&) const = default;
    [[nodiscard]] bool hasDistrict(std::optional<std::size_t> district) const;
    [[nodiscard]] bool hasCell(std::optional<GridCell> cell) const;
};

// First the whole, then districts, then cells within published districts. Every piece that the published
// areas cut out of each other (a district inside or outside its cells, all that lies in no published
// district) is empty or may be shown by itself: whatever anybody works out as a difference is of five farms
// or more. Where a remainder would be smaller, the smallest area beside it is held back as well.
//
// within  areas of an earlier issue of the same week: none beyond them is published
PublishedAreas publishedAreas(std::span<const Reporter> reporters, const PublishedAreas* within = nullptr);

// The smallest piece that a trap is in, cut out by the published areas.
struct Piece {
    std::optional<std::size_t> district; // nothing outside all published districts
    std::optional<GridCell> cell; // nothing outside all published cells

    auto operator<=>(const Piece&) const = default;
};

Piece pieceOf(const Reporter& reporter, const PublishedAreas& areas);

} // namespace duskrow::domain
