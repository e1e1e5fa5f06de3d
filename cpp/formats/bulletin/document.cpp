// SPDX-License-Identifier: MIT
#include "formats/bulletin/document.h"

#include <cstdlib>

#include "formats/bulletin/area_features.h"
#include "formats/bulletin/area_table.h"
#include "formats/bulletin/darwin_core.h"
#include "formats/bulletin/page.h"
#include "formats/bulletin/region_map.h"
#include "formats/bulletin/week_chart.h"

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

std::string twoDigits(long long value)
{
    return (value < 10 ? "0" : "") + std::to_string(value);
}

} // namespace

std::string weekText(IsoWeek week)
{
    return std::to_string(week.year) + "-W" + twoDigits(week.week);
}

std::string fileStem(IsoWeek week)
{
    return "bulletin-" + weekText(week);
}

std::string centreText(std::int32_t e7)
{
    constexpr std::int32_t hundredthE7 = 100'000;
    const long long hundredths = std::llabs(static_cast<long long>(e7)) / hundredthE7;
    return (e7 < 0 ? "-" : "") + std::to_string(hundredths / 100) + "." + twoDigits(hundredths % 100);
}

std::string momentText(Instant at)
{
    const auto seconds = std::chrono::floor<std::chrono::seconds>(at).time_since_epoch();
    const auto days = std::chrono::floor<std::chrono::days>(seconds);
    const long long rest = (seconds - days).count();
    return formatDay(LocalDay{days}) + "T" + twoDigits(rest / 3600) + ":" + twoDigits(rest / 60 % 60) + ":"
        + twoDigits(rest % 60) + "Z";
}

std::string phaseCode(FlightPhase phase)
{
    switch (phase) {
    case FlightPhase::NoneYet:
        return "none_yet";
    case FlightPhase::Rising:
        return "rising";
    case FlightPhase::NearHighest:
        return "near_highest";
    case FlightPhase::PastHighest:
        return "past_highest";
    case FlightPhase::NotKnown:
        break;
    }
    return {};
}

std::string bandId(const Bulletin& bulletin, std::optional<int> level)
{
    for (const Band& band : bulletin.bands)
        if (level && band.level == *level) return band.id;
    return {};
}

Picture mapOf(const BulletinDocument& document, double width)
{
    const auto& [bulletin, words, overlay, published, terms, key] = document;
    RegionMapInput input;
    input.width = width;
    for (const DistrictWeek& district : bulletin.districts)
        if (const OverlayArea* area = overlay ? areaNamed(*overlay, district.name) : nullptr)
            input.districts.push_back({district.name, area->polygons,
                district.figures ? district.figures->typicalLevel : std::nullopt});
    for (const CellWeek& cell : bulletin.cells) input.cells.push_back({cell.cell, cell.figures.typicalLevel});
    if (overlay) input.lines = overlay->lines;
    input.title = words.mapHeading;
    input.description = words.mapDescription;
    input.north = words.north;
    input.empty = words.mapEmpty;
    input.bands = words.bands;
    input.unknownLabel = words.unknownLabel;
    input.cellLabel = words.cellLabel;
    return regionMap(input);
}

Picture chartOf(const BulletinDocument& document, double width)
{
    const Bulletin& bulletin = document.bulletin;
    const text::BulletinWords& words = document.words;
    WeekChartInput input;
    input.width = width;
    input.title = words.chartHeading;
    input.description = words.chartDescription;
    input.gapLabel = words.gapLabel;
    for (std::size_t i = 0; i < words.weeks.size() && i < words.weekMedians.size(); ++i) {
        std::optional<Moths> median;
        if (i < bulletin.weeks.size())
            median = bulletin.weeks[i].median;
        else if (bulletin.whole)
            median = bulletin.whole->weekMedian;
        input.weeks.push_back(
            {words.weeks[i], median, median ? std::to_string(median->value()) : std::string()});
    }
    return weekChart(input);
}

Result<std::vector<ExportedFile>> bulletinFiles(const BulletinDocument& document)
{
    const std::string stem = fileStem(document.bulletin.iso);
    auto table = writeCsv(areaTable(document), ByteOrderMark::Absent);
    if (!table) return table.error();
    auto archive = darwinCoreArchive(document);
    if (!archive) return archive.error();
    return std::vector<ExportedFile>{{stem + ".html", bulletinPage(document)},
        {stem + ".csv", std::move(*table)}, {stem + ".geojson", areaFeatures(document)},
        {stem + "-dwca.zip", std::move(*archive)}};
}

} // namespace duskrow::formats
