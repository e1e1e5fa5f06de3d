// SPDX-License-Identifier: MIT
#include "formats/bulletin/area_table.h"

#include <cmath>

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

Cell orNothing(std::string text)
{
    return text.empty() ? Cell() : Cell(std::move(text));
}

class Rows {
public:
    explicit Rows(const BulletinDocument& document) : m_bulletin(document.bulletin) { }

    std::vector<Cell> area(
        const char* kind, std::string name, const std::optional<AreaFigures>& figures) const
    {
        std::vector<Cell> row = start(kind, std::move(name));
        row.insert(row.end(), 3, Cell());
        if (!figures) {
            row.insert(row.end(), 7, Cell());
            return row;
        }
        row.emplace_back(std::to_string(figures->counted));
        row.emplace_back(std::to_string(figures->expected));
        add(row, *figures);
        return row;
    }

    // How many traps a cell has is nowhere said.
    std::vector<Cell> cell(const CellWeek& cell) const
    {
        std::vector<Cell> row = start("cell", {});
        const GeoPoint centre = centreOf(cell.cell);
        row.emplace_back(centreText(centre.latE7));
        row.emplace_back(centreText(centre.lonE7));
        row.emplace_back(std::to_string(std::llround(cell.uncertainty.value())));
        row.insert(row.end(), 2, Cell());
        add(row, cell.figures);
        return row;
    }

private:
    std::vector<Cell> start(const char* kind, std::string name) const
    {
        return {weekText(m_bulletin.iso), formatDay(m_bulletin.week.first), formatDay(m_bulletin.week.last),
            std::to_string(m_bulletin.issue), m_bulletin.pest, kind, orNothing(std::move(name))};
    }

    void add(std::vector<Cell>& row, const AreaFigures& figures) const
    {
        row.emplace_back(std::to_string(figures.weekMedian.value()));
        row.emplace_back(std::to_string(figures.seasonMedian.value()));
        row.push_back(orNothing(bandId(m_bulletin, figures.typicalLevel)));
        row.push_back(orNothing(bandId(m_bulletin, figures.highestLevel)));
        row.push_back(orNothing(phaseCode(figures.phase)));
    }

    const Bulletin& m_bulletin;
};

} // namespace

Table areaTable(const BulletinDocument& document)
{
    const Bulletin& bulletin = document.bulletin;
    Table table;
    table.name = fileStem(bulletin.iso);
    table.header = {"week", "first_day", "last_day", "issue", "pest", "area_kind", "area_name", "latitude",
        "longitude", "coordinate_uncertainty_m", "traps_counted", "traps_expected", "week_median_moths",
        "season_median_moths", "median_band_so_far", "highest_band_so_far", "flight"};
    const Rows rows(document);
    table.rows.push_back(rows.area("region", bulletin.region, bulletin.whole));
    for (const DistrictWeek& district : bulletin.districts)
        table.rows.push_back(rows.area("district", district.name, district.figures));
    for (const CellWeek& cell : bulletin.cells) table.rows.push_back(rows.cell(cell));
    return table;
}

} // namespace duskrow::formats
