// SPDX-License-Identifier: MIT
#include "domain/bulletin/disclosure.h"

#include <algorithm>
#include <set>

namespace duskrow::domain {

namespace {

template <typename T>
bool holds(const std::vector<T>& sorted, const std::optional<T>& one)
{
    return one && std::binary_search(sorted.begin(), sorted.end(), *one);
}

// Takes areas back one by one until nothing that is left over is too small.
class Choice {
public:
    Choice(std::span<const Reporter> reporters, const PublishedAreas* within)
        : m_reporters(reporters), m_within(within)
    {
    }

    PublishedAreas made()
    {
        FarmTally all;
        for (const Reporter& reporter : m_reporters) all.add(reporter.farm);
        if (!all.mayShow() || (m_within && !m_within->whole)) return {};
        m_areas.whole = true;
        chooseDistricts();
        chooseCells();
        return std::move(m_areas);
    }

private:
    void chooseDistricts()
    {
        std::map<std::size_t, FarmTally> districts;
        for (const Reporter& reporter : m_reporters)
            if (reporter.district) districts[*reporter.district].add(reporter.farm);
        std::erase_if(districts, [this](const auto& entry) {
            return !entry.second.mayShow() || (m_within && !m_within->hasDistrict(entry.first));
        });
        while (!restOf(districts).isEmptyOrMayShow()) dropSmallest(districts);
        for (const auto& [district, farms] : districts) m_areas.districts.push_back(district);
    }

    [[nodiscard]] FarmTally restOf(const std::map<std::size_t, FarmTally>& districts) const
    {
        FarmTally rest;
        for (const Reporter& reporter : m_reporters)
            if (!reporter.district || !districts.contains(*reporter.district)) rest.add(reporter.farm);
        return rest;
    }

    template <typename Key>
    static void dropSmallest(std::map<Key, FarmTally>& areas)
    {
        areas.erase(std::min_element(areas.begin(), areas.end(),
            [](const auto& a, const auto& b) { return a.second.farms() < b.second.farms(); }));
    }

    void chooseCells()
    {
        std::map<GridCell, std::map<std::optional<std::size_t>, FarmTally>> cells;
        for (const Reporter& reporter : m_reporters)
            if (reporter.cell) cells[*reporter.cell][publishedDistrict(reporter)].add(reporter.farm);
        std::erase_if(cells, [this](const auto& entry) {
            if (m_within && !m_within->hasCell(entry.first)) return true;
            return std::any_of(entry.second.begin(), entry.second.end(),
                [](const auto& piece) { return !piece.first || !piece.second.mayShow(); });
        });
        while (const auto district = districtWithSmallRest(cells)) {
            // The cell that shares the fewest of its farms goes back to what is left of the district.
            auto smallest = cells.end();
            for (auto at = cells.begin(); at != cells.end(); ++at) {
                if (!at->second.contains(*district)) continue;
                if (smallest == cells.end()
                    || at->second.at(*district).farms() < smallest->second.at(*district).farms())
                    smallest = at;
            }
            cells.erase(smallest);
        }
        for (const auto& [cell, pieces] : cells) m_areas.cells.push_back(cell);
    }

    [[nodiscard]] std::optional<std::size_t> publishedDistrict(const Reporter& reporter) const
    {
        return m_areas.hasDistrict(reporter.district) ? reporter.district : std::nullopt;
    }

    // A published district that may be shown as a whole, but not what its cells leave of it.
    template <typename Cells>
    [[nodiscard]] std::optional<std::size_t> districtWithSmallRest(const Cells& cells) const
    {
        std::map<std::size_t, FarmTally> rests;
        for (const Reporter& reporter : m_reporters)
            if (publishedDistrict(reporter) && (!reporter.cell || !cells.contains(*reporter.cell)))
                rests[*reporter.district].add(reporter.farm);
        for (const auto& [district, rest] : rests)
            if (!rest.mayShow() && std::any_of(cells.begin(), cells.end(), [d = district](const auto& cell) {
                    return cell.second.contains(d);
                }))
                return district;
        return std::nullopt;
    }

    std::span<const Reporter> m_reporters;
    const PublishedAreas* m_within;
    PublishedAreas m_areas;
};

} // namespace

bool FarmTally::mayShow() const
{
    if (farms() < fewestFarms) return false;
    std::size_t all = 0;
    std::size_t most = 0;
    for (const auto& [farm, traps] : m_traps) {
        all += traps;
        most = std::max(most, traps);
    }
    return 2 * most <= all;
}

bool PublishedAreas::hasDistrict(std::optional<std::size_t> district) const
{
    return holds(districts, district);
}

bool PublishedAreas::hasCell(std::optional<GridCell> cell) const
{
    return holds(cells, cell);
}

PublishedAreas publishedAreas(std::span<const Reporter> reporters, const PublishedAreas* within)
{
    return Choice(reporters, within).made();
}

Piece pieceOf(const Reporter& reporter, const PublishedAreas& areas)
{
    Piece piece;
    if (areas.hasDistrict(reporter.district)) piece.district = reporter.district;
    if (areas.hasCell(reporter.cell)) piece.cell = reporter.cell;
    return piece;
}

} // namespace duskrow::domain
