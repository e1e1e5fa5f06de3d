// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <map>

#include "app/row_list.h"
#include "formats/csv.h"
#include "formats/map/band_years.h"
#include "store/season_years.h"

namespace duskrow::app {

struct YearNames {
    std::map<domain::Uuid, QString> districts;
    std::map<domain::Uuid, QString> members;

    // Errors  as in queries.h
    static domain::Result<YearNames> read(store::Reader& reader);
    [[nodiscard]] QString district(const domain::Uuid& id) const; // "No district"
    [[nodiscard]] QString member(const domain::Uuid& id) const; // "Cooperator not known"
};

// Districts of one week, all of them together first.
std::vector<Row> weekRows(
    const YearNames& names, const store::RegionOfSeason& season, const domain::ReportingWeek& week);

// Districts or keepers by year, all of them together first.
std::vector<Row> yearRows(
    const YearNames& names, const std::vector<domain::RegionYear>& years, bool byKeeper);

// Years with the traps of each band.
std::vector<Row> bandRows(
    const std::vector<domain::RegionYear>& years, const domain::Protocol& protocol, const std::string& type);

formats::BandYearsInput bandYearsInput(
    const std::vector<domain::RegionYear>& years, const domain::Protocol& protocol, const std::string& type);

// The same as tables, a line for every district and week, or group and year, or year.
formats::Table weekTable(const YearNames& names, const store::RegionOfSeason& season);
formats::Table yearTable(const YearNames& names, const std::vector<domain::RegionYear>& years, bool byKeeper);
formats::Table bandTable(const formats::BandYearsInput& input);

} // namespace duskrow::app
