// SPDX-License-Identifier: MIT
#include "formats/formats.h"

#include <algorithm>
#include <array>

#include "formats/catch_archive.h"
#include "formats/trap_points.h"

namespace duskrow::formats {

using domain::Error;
using domain::ErrorCode;
using domain::Result;

namespace {

// One file for each table: a CSV file holds one table only.
Result<std::vector<ExportedFile>> exportCsv(const ExportInput& input)
{
    std::vector<ExportedFile> files;
    for (const Table& table : input.tables) {
        auto bytes = writeCsv(table);
        if (!bytes) return bytes.error();
        files.push_back({table.name + ".csv", std::move(*bytes)});
    }
    return files;
}

Result<std::vector<ExportedFile>> exportCalendar(const ExportInput& input)
{
    auto bytes = writeCalendar({input.programme, input.made, input.events});
    if (!bytes) return bytes.error();
    return std::vector<ExportedFile>{{"season.ics", std::move(*bytes)}};
}

constexpr std::array<Format, 5> knownFormats{{
    {"csv", "csv", "text/csv; charset=utf-8; header=present", "format.csv", exportCsv},
    {"geojson", "geojson", "application/geo+json", "format.geojson", exportGeoJson},
    {"gpx", "gpx", "application/gpx+xml", "format.gpx", exportGpx},
    {"ics", "ics", "text/calendar; charset=utf-8", "format.ics", exportCalendar},
    {"dwca", "zip", "application/zip", "format.dwca", exportDarwinCore},
}};

} // namespace

std::span<const Format> formats()
{
    return knownFormats;
}

Result<Format> formatOf(std::string_view id)
{
    const auto found = std::find_if(
        knownFormats.begin(), knownFormats.end(), [id](const Format& one) { return one.id == id; });
    if (found != knownFormats.end()) return *found;
    std::string ids;
    for (const Format& one : knownFormats) ids += (ids.empty() ? "" : ", ") + std::string(one.id);
    return Error{ErrorCode::FormatUnknown, {std::string(id), ids}};
}

} // namespace duskrow::formats
